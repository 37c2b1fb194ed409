/** Where in the office an address points: `#office` is the list of jobs, `#office/<job>` one job. */

export interface OfficePlace {
  /** Null for the list. */
  job: string | null
}

/** Null where the address is not the office's. */
export const officePlace = (hash: string): OfficePlace | null => {
  const found = /^#office(?:\/(.+))?$/.exec(hash)
  if (!found) return null
  try {
    return { job: found[1] === undefined ? null : decodeURIComponent(found[1]) }
  } catch {
    return { job: null }
  }
}

/** The address of one job in the office. */
export const officeHash = (job?: string): string =>
  job === undefined ? "#office" : `#office/${encodeURIComponent(job)}`
