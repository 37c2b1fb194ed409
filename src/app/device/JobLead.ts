/**
 * Which of several windows has a job in hand. A lock of the browser's decides, so a window that dies gives it up by
 * itself; a channel tells the others that the log grew, and asks for the lead. Where the browser has no such locks every
 * window leads, and the store still refuses to write a line twice.
 */

/** How long a window that leads may take to hand over before the lead is taken: one that sleeps does not answer. */
export const handOverMs = 3000

export interface LeadHooks {
  /** The lead has come to this window. */
  led(): void
  /** The lead is asked for: resolves once everything of this window's is stored. */
  handOver(): Promise<void>
  /** The lead was taken, and there was no time for anything. */
  lost(): void
  /** The window that leads has written something. */
  grew(): void
}

export type Role = "leads" | "follows"

export interface JobLead {
  join(job: string, hooks: LeadHooks): Promise<Role>
  /** Asks the window that leads to hand over; `led` tells when it has. */
  ask(): void
  /** Tells the others that the log has grown. */
  grew(): void
  leave(): void
}

class LockedLead {
  private readonly channel: BroadcastChannel
  private readonly name: string
  private readonly over = new AbortController()
  private release: (() => void) | null = null

  constructor(
    job: string,
    private readonly hooks: LeadHooks,
  ) {
    this.name = `bothhands.job.${job}`
    this.channel = new BroadcastChannel(this.name)
    this.channel.onmessage = ({ data }) => {
      if (data === "grew" && !this.release) hooks.grew()
      if (data === "ask" && this.release) void this.handOver()
    }
  }

  begin(): Promise<Role> {
    return new Promise((fulfil) => {
      const request = navigator.locks.request(this.name, { ifAvailable: true }, (lock) => {
        fulfil(lock ? "leads" : "follows")
        if (lock) return this.hold()
        this.wait()
      })
      request.catch(() => this.robbed())
    })
  }

  ask(): void {
    this.channel.postMessage("ask")
    setTimeout(() => {
      if (this.release || this.over.signal.aborted) return
      navigator.locks.request(this.name, { steal: true }, () => this.take()).catch(() => this.robbed())
    }, handOverMs)
  }

  grew(): void {
    this.channel.postMessage("grew")
  }

  leave(): void {
    this.over.abort()
    this.release?.()
    this.channel.close()
  }

  /** Keeps the lock until it is released. */
  private hold(): Promise<void> {
    return new Promise((fulfil) => {
      this.release = () => {
        this.release = null
        fulfil()
      }
    })
  }

  private take(): Promise<void> | undefined {
    if (this.over.signal.aborted || this.release) return undefined
    const held = this.hold()
    this.hooks.led()
    return held
  }

  /** In the queue for the lead, behind those who came before. */
  private wait(): void {
    const { signal } = this.over
    navigator.locks.request(this.name, { signal }, () => this.take()).catch(() => this.robbed())
  }

  private async handOver(): Promise<void> {
    await this.hooks.handOver()
    this.release?.()
    this.wait()
  }

  private robbed(): void {
    if (!this.release || this.over.signal.aborted) return
    this.release = null
    this.hooks.lost()
    this.wait()
  }
}

/** For what no other window can have: leads at once and for good. */
export const leadAlone: JobLead = { join: async () => "leads", ask: () => {}, grew: () => {}, leave: () => {} }

/** The lead of one job at a time. */
export const createJobLead = (): JobLead => {
  if (!("locks" in navigator) || typeof BroadcastChannel === "undefined") return leadAlone
  let lead: LockedLead | null = null
  const leave = () => {
    lead?.leave()
    lead = null
  }
  return {
    join: (job, hooks) => {
      leave()
      lead = new LockedLead(job, hooks)
      return lead.begin()
    },
    ask: () => lead?.ask(),
    grew: () => lead?.grew(),
    leave,
  }
}
