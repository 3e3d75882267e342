package drumline.sheets.content;

import drumline.economics.triage.Verdict;
import java.time.LocalDate;

/**
 * Who asks for what, and the answer in a sentence.
 *
 * @param title what the piece is called
 * @param customer who asks
 * @param number print or inquiry number
 * @param date day of the study
 * @param machine machine that it is laid out on
 * @param material material and bar
 * @param verdict whether it belongs there
 * @param summary the answer in one or two sentences
 */
public record StudyHead(
    String title,
    String customer,
    String number,
    LocalDate date,
    String machine,
    String material,
    Verdict verdict,
    String summary) {}
