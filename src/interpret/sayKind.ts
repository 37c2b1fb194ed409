/** A field's name in speech, to be put after "the" or an item: "water size", "the reading". */

const names: Readonly<Record<string, string>> = {
  conductor_csa: "size",
  neutral_csa: "size of the supply neutral",
  service: "part",
  length: "length",
  distance: "distance of the clamp",
  resistance: "reading",
  earthing_arrangement: "earthing arrangement",
  fuse_rating: "fuse rating",
  polarity: "polarity",
  step_done: "step",
  survey: "survey",
  note: "note",
  time: "time",
  time_of_test: "time of the test",
  date_of_test: "date of the test",
  next_visit: "date of the next visit",
  next_test: "date of the next test",
  field: "value",
}

/** Spoken name of a fact kind or of an asked time; a kind it does not know is said with spaces. */
export const sayKind = (kind: string): string => names[kind] ?? kind.replaceAll("_", " ")
