/** The alarm of a check-in: sounds again and again until it is off, with time in between for the ear to hear the answer. */

const everyMs = 6000

export class AlarmBell {
  private timer: ReturnType<typeof setInterval> | null = null

  constructor(private readonly sound: () => void) {}

  get rings(): boolean {
    return this.timer !== null
  }

  ring(on: boolean): void {
    if (this.timer !== null) clearInterval(this.timer)
    this.timer = on ? setInterval(this.sound, everyMs) : null
    if (on) this.sound()
  }
}
