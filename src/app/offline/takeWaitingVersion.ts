/**
 * Lets a newer version that waits take over while the page starts, before any job is in hand: the only moment at which
 * the page loads itself again. Where another window of the app is open the newer version goes on waiting.
 */
import { takeOver } from "./takeOver"

/** How long the newer version may take to answer, and then to take over, in milliseconds. Our choice. */
const patienceMs = { answer: 1000, change: 5000 }

const after = <Value>(ms: number, value: Value) => new Promise<Value>((done) => setTimeout(done, ms, value))

const askToTakeOver = (waiting: Pick<ServiceWorker, "postMessage">): Promise<boolean> => {
  const { port1, port2 } = new MessageChannel()
  const answer = new Promise<boolean>((done) => {
    port1.onmessage = ({ data }) => done(data === true)
  })
  waiting.postMessage(takeOver, [port2])
  return Promise.race([answer, after(patienceMs.answer, false)]).finally(() => port1.close())
}

/** Gives true when the page was told to load itself again, so that nothing else should be begun. */
export const takeWaitingVersion = async (
  container: ServiceWorkerContainer | undefined,
  reload: () => void,
): Promise<boolean> => {
  const registration = await container?.getRegistration().catch(() => undefined)
  if (!container || !registration?.waiting) return false
  const changed = new Promise<void>((done) => container.addEventListener("controllerchange", () => done()))
  if (!(await askToTakeOver(registration.waiting))) return false
  await Promise.race([changed, after(patienceMs.change, undefined)])
  reload()
  return true
}
