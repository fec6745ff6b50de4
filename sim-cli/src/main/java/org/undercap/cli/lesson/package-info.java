/**
 * The teaching set as pictures and pages: what {@link org.undercap.lesson} reckons, with words and
 * drawings.
 *
 * <p>Start with {@link org.undercap.cli.lesson.LessonPack}, which makes all files of a pack. All
 * words stand in {@code words.txt} ({@link org.undercap.cli.lesson.Words}), which a translation may
 * replace; {@link org.undercap.cli.lesson.Speech} fills figures in.
 */
package org.undercap.cli.lesson;
