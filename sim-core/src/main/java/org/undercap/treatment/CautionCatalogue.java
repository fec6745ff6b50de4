package org.undercap.treatment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;

/** The cautions, from {@code cautions.csv}. They cannot be switched off. */
public final class CautionCatalogue {
  private static final CautionCatalogue SHIPPED =
      new CautionCatalogue(
          Catalogue.of(
              "caution",
              CsvResource.read(CautionCatalogue.class, "cautions.csv"),
              "id",
              row -> new Caution(row.required("id"), row.required("title"), row.required("text"))));

  private final Catalogue<Caution> cautions;

  private CautionCatalogue(Catalogue<Caution> cautions) {
    this.cautions = cautions;
  }

  /**
   * The cautions.
   *
   * @return the catalogue
   */
  public static CautionCatalogue shipped() {
    return SHIPPED;
  }

  /**
   * A caution by its id.
   *
   * @param id as in {@code oxalic-vapour}
   * @return the caution
   * @throws IllegalArgumentException if there is none
   */
  public Caution get(String id) {
    return cautions.get(id);
  }

  /**
   * All cautions.
   *
   * @return in the order of the table
   */
  public List<Caution> all() {
    return cautions.all();
  }

  /**
   * The cautions of a report: that of every report, that of every treatment if there is one, then
   * those of the methods.
   *
   * @param methods methods in the report
   * @return each caution once
   */
  public List<Caution> of(List<Method> methods) {
    Set<String> ids = new LinkedHashSet<>();
    ids.add("every-report");
    if (!methods.isEmpty()) {
      ids.add("every-treatment");
    }
    methods.forEach(method -> ids.addAll(method.cautions()));
    List<Caution> result = new ArrayList<>();
    ids.forEach(id -> result.add(get(id)));
    return List.copyOf(result);
  }
}
