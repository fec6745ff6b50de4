package org.undercap.cli.report;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.ParameterWords;
import org.undercap.cli.output.SourceWords;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.Sinusoid;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.hive.ArrivalLevel;
import org.undercap.parameter.Parameter;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.Release;
import org.undercap.treatment.Response;
import org.undercap.treatment.SideEffects;
import org.undercap.treatment.TemperatureResponse;

/** What the catalogues hold, as tables in Markdown. */
final class ModelTables {
  private static final String NOTHING = "-";

  private ModelTables() {}

  static String parameters(List<Parameter> parameters) {
    MarkdownTable table =
        new MarkdownTable(
            "parameter",
            "value",
            "plausible range",
            "unit",
            "in ensembles",
            "kind",
            "source",
            "note");
    for (Parameter parameter : parameters) {
      table.row(
          "`" + parameter.id().id() + "`",
          Numbers.exact(parameter.values()),
          orNothing(ParameterWords.range(parameter)),
          ParameterWords.unit(parameter),
          parameter.spread().toString(),
          parameter.kind().word(),
          String.join(", ", parameter.sourceKeys())
              + " ("
              + SourceWords.read(parameter.read())
              + ")",
          orNothing(parameter.note()));
    }
    return table.render().stripTrailing();
  }

  static String climates() {
    MarkdownTable table =
        new MarkdownTable(
            "climate",
            "place",
            "Tm (C)",
            "Ta (C)",
            "Jmax (day)",
            "E in the middle of each month (eggs per day)",
            "d in the middle of each month (fraction)");
    for (Climate climate : ClimateCatalogue.shipped().all()) {
      List<String> cells = new ArrayList<>(List.of(climate.id(), climate.description()));
      if (climate.temperature() instanceof Sinusoid course) {
        cells.add(Numbers.exact(course.mean()));
        cells.add(Numbers.exact(course.amplitude()));
        cells.add(Numbers.exact(course.warmestDay()));
      } else {
        cells.addAll(List.of(NOTHING, NOTHING, NOTHING));
      }
      cells.add(Numbers.exact(climate.eggs().values()));
      cells.add(Numbers.exact(climate.droneShare().values()));
      table.row(cells.toArray(String[]::new));
    }
    return table.render().stripTrailing();
  }

  static String arrivals(Collection<String> sources) {
    List<String> headings = new ArrayList<>(List.of("level (mites per day)"));
    for (Month month : Month.values()) {
      headings.add(month.getDisplayName(TextStyle.SHORT, Locale.ROOT));
    }
    headings.add("source");
    MarkdownTable table = new MarkdownTable(headings.toArray(String[]::new));
    for (ArrivalLevel level : ArrivalCatalogue.shipped().all()) {
      List<String> cells = new ArrayList<>(List.of(level.id() + ": " + level.description()));
      level.perMonth().forEach(mites -> cells.add(Numbers.exact(mites)));
      cells.add(String.join(", ", level.sourceKeys()));
      sources.addAll(level.sourceKeys());
      table.row(cells.toArray(String[]::new));
    }
    return table.render().stripTrailing();
  }

  static String treatments(Collection<String> sources) {
    MarkdownTable table =
        new MarkdownTable(
            "treatment",
            "release",
            "temperature",
            "response",
            "under the cappings",
            "laying; adults; open brood",
            "humid places",
            "aims at (published)",
            "source");
    for (Method method : MethodCatalogue.shipped().all()) {
      SideEffects harm = method.profile().sideEffects();
      table.row(
          method.name(),
          release(method.profile().release()),
          temperature(method.profile().temperature()),
          response(method.profile().response()),
          Numbers.exact(method.profile().inCellRatio()),
          Numbers.exact(List.of(harm.laying(), harm.adults(), harm.openBrood())),
          "x " + Numbers.exact(method.humidFactor()),
          method.aimsAt(),
          String.join(", ", method.sourceKeys()));
      sources.addAll(method.sourceKeys());
    }
    return table.render().stripTrailing();
  }

  private static String release(Release release) {
    if (release instanceof Release.Pulse pulse) {
      return "pulse " + Numbers.exact(pulse.shares());
    } else if (release instanceof Release.Decay decay) {
      return "decay, half-life "
          + Numbers.exact(decay.halfLife())
          + " d, "
          + (decay.lag() == 0 ? "no lag" : "lag " + Numbers.exact(decay.lag()) + " d")
          + ", "
          + decay.days()
          + " d";
    }
    Release.Plateau plateau = (Release.Plateau) release;
    return "plateau, ramp " + Numbers.exact(plateau.ramp()) + " d, " + plateau.days() + " d";
  }

  private static String temperature(TemperatureResponse response) {
    return response instanceof TemperatureResponse.Vapour vapour
        ? "vapour against "
            + Numbers.exact(vapour.reference())
            + " C, share "
            + Numbers.exact(vapour.carrierShare())
        : NOTHING;
  }

  private static String response(Response response) {
    if (response instanceof Response.Kill kill) {
      return "kill " + Numbers.exact(kill.broodless()) + " to " + Numbers.exact(kill.fullBrood());
    } else if (response instanceof Response.Constant constant) {
      return "hazard h " + Numbers.exact(constant.perDay());
    }
    Response.Hill hill = (Response.Hill) response;
    return "Hill, hmax "
        + Numbers.exact(hill.largest())
        + ", C0 "
        + Numbers.exact(hill.full())
        + ", C50 "
        + Numbers.exact(hill.half())
        + ", n "
        + Numbers.exact(hill.exponent());
  }

  static String sources(Collection<String> keys) {
    List<String> items = new ArrayList<>();
    SourceWords.citations(List.copyOf(keys))
        .forEach(citation -> items.add("- " + escape(citation)));
    return String.join("\n", items);
  }

  private static String escape(String text) {
    return text.replace("\\", "\\\\").replace("*", "\\*").replace("_", "\\_").replace("<", "\\<");
  }

  private static String orNothing(String text) {
    return text.isEmpty() ? NOTHING : text;
  }
}
