/** What a survey of a part showed, in words that the interpreter reads back as that. */
import type { Survey } from "../facts/Fact"

const names: Readonly<Record<Survey, string>> = {
  needs_bond: "needs a bond",
  needs_no_bond: "needs no bond",
  plastic_at_entry: "plastic where it comes in",
  not_here: "none on this job",
}

export const saySurvey = (survey: Survey): string => names[survey]
