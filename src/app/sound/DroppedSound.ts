/** How much kept sound gave way to lines on a full device since the page was opened, for whoever has to say so. */
export class DroppedSound {
  private clips = 0
  private readonly listeners = new Set<() => void>()

  subscribe = (changed: () => void): (() => void) => {
    this.listeners.add(changed)
    return () => void this.listeners.delete(changed)
  }

  add(clips: number): void {
    this.clips += clips
    for (const changed of this.listeners) changed()
  }

  /** A plain sentence, fit to be spoken; null where nothing was dropped. */
  words = (): string | null =>
    this.clips === 0
      ? null
      : "The storage of this device is full. The oldest kept sound was deleted to make room. Nothing of the job was lost."
}
