/** What kind of damage a fault of a job file tells of, so that a job can be shown as whole, cut or changed at a glance. */

/** `lost`: a line could not be read or is not there. `cut`: the end is missing. `changed`: a hash does not fit. */
export type FaultKind = "lost" | "cut" | "changed"

/** `fault` is a sentence as `readJobFile` writes it; one that is not known counts as the least of them. */
export const faultKind = (fault: string): FaultKind => {
  if (/is cut|end is missing/.test(fault)) return "cut"
  return /was changed|hash .* does not fit|not what the mark says|signs another record/.test(fault) ? "changed" : "lost"
}
