/**
 * What the worker reads so that the ear learns his voice: twenty sentences of the product's own kind. Together they hold
 * every digit, the three words for nought, all teens and tens, the units, the parts, the usual steps, and yes and no.
 */
export const prompts = [
  "gas bond ten square seventeen metres",
  "water bond sixteen square fifteen metres",
  "oil bond four square twelve metres",
  "steel bond twenty five square sixty metres",
  "heating six square thirteen metres",
  "earthing conductor thirty five square ninety metres",
  "water nought point nought eight ohms",
  "gas bond zero point one three ohms",
  "oil bond oh point two six",
  "steel nought point nine four",
  "water bond eleven metres",
  "gas bond eighteen metres",
  "oil bond nineteen metres",
  "forty metres of sixteen square",
  "eighty seven metres",
  "three hundred and fifty mil off the stopcock",
  "seventy millimetres from the meter",
  "gas pipe cleaned clamp fitted",
  "no make that fourteen metres",
  "yes",
] as const
