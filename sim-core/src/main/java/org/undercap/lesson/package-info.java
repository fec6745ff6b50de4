/**
 * What the lessons of the teaching set reckon: numbers of the engine, without words and drawings.
 *
 * <p>Start with {@link org.undercap.lesson.Lesson}, which lists the lessons; each gives a {@link
 * org.undercap.lesson.LessonResult} for a {@link org.undercap.lesson.LessonPlace}. A result also
 * tells whether the numbers say what the lesson teaches: there are places where they do not.
 */
package org.undercap.lesson;
