/**
 * The microphone and the sound graph behind it. Rates and devices change under way (a headset is put on), so the graph
 * takes whatever rate there is and is built anew when a device, a track or the graph itself gives out.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { type ToWorklet, workletName } from "./earMessages"
import workletUrl from "./microphoneWorklet?worker&url"

/**
 * Plain sound, as the model was trained on. Echo need not be taken out, since the ear is deaf while the app speaks, and
 * browsers that take it out turn the loudspeaker down; levelling and noise suppression bend words while they settle.
 */
const constraints: MediaTrackConstraints = {
  channelCount: 1,
  echoCancellation: false,
  noiseSuppression: false,
  autoGainControl: false,
}

export interface MicrophoneEvents {
  /** The microphone has given out and could not be had again. */
  lost(because: string): void
  /**
   * A new port with sound: the first at the start, others after each rebuilding. `changed` tells that it is another
   * microphone than before, so that what was just said may be lost.
   */
  port(port: MessagePort, changed?: boolean): void
}

export interface Microphone {
  mark(mark: Exclude<ToWorklet, { port: MessagePort }>): void
  close(): Promise<void>
}

/** What the browser's refusals mean, fit to be spoken. */
const whyNot: Record<string, string> = {
  NotAllowedError: "The microphone is not allowed. Allow it in the browser's settings for this page.",
  NotFoundError: "There is no microphone.",
  NotReadableError: "Another program holds the microphone.",
  SecurityError: "The microphone only works on a secure page.",
}

interface Graph {
  stream: MediaStream
  context: AudioContext
  node: AudioWorkletNode
}

/** Asks for the microphone; the browser may ask the worker. */
export const openMicrophone = async (events: MicrophoneEvents): Promise<Outcome<Microphone>> => {
  let graph: Graph | null = null
  let closed = false
  let sourceBefore: string | null = null
  let building: Promise<Outcome> | null = null
  let deafMark: Exclude<ToWorklet, { port: MessagePort }> | null = null

  const send = (message: ToWorklet, handOver: Transferable[] = []) => graph?.node.port.postMessage(message, handOver)

  const build = async (): Promise<Outcome> => {
    const made = await makeGraph()
    if (!made.ok) return made
    graph = made.value
    const { port1, port2 } = new MessageChannel()
    const source = describeSource(graph)
    events.port(port1, sourceBefore !== null && sourceBefore !== source)
    sourceBefore = source
    send({ port: port2 }, [port2])
    if (deafMark?.mark === "deafen") send(deafMark)
    graph.stream.getAudioTracks()[0]?.addEventListener("ended", rebuild)
    graph.context.addEventListener("statechange", wake)
    return done(undefined)
  }

  // Safari refuses a second capture until the first graph is closed, so the old one goes before the new one comes.
  const rebuild = () => {
    if (closed || building) return
    building = (async () => {
      await drop(graph)
      graph = null
      return build()
    })()
    building
      .then((outcome) => {
        if (!outcome.ok && !closed) events.lost(outcome.because)
      })
      .finally(() => {
        building = null
      })
  }

  const wake = () => {
    if (closed || !graph) return
    if (graph.context.state === "closed") rebuild()
    else if (graph.context.state !== "running") graph.context.resume().catch(rebuild)
  }

  /** A track that stays muted gives silence for ever, although it counts as live. */
  const lookAgain = () => {
    const track = graph?.stream.getAudioTracks()[0]
    if (!track || track.readyState === "ended" || track.muted) rebuild()
  }

  const whenVisible = () => {
    if (document.visibilityState === "visible") {
      wake()
      lookAgain()
    }
  }

  const first = await build()
  if (!first.ok) return first
  navigator.mediaDevices.addEventListener("devicechange", rebuild)
  document.addEventListener("visibilitychange", whenVisible)

  return done({
    mark: (mark) => {
      deafMark = mark
      send(mark)
    },
    close: async () => {
      closed = true
      navigator.mediaDevices.removeEventListener("devicechange", rebuild)
      document.removeEventListener("visibilitychange", whenVisible)
      await building?.catch(() => {})
      await drop(graph)
      graph = null
    },
  })
}

/** Tells two microphones apart, and one microphone at two rates. */
const describeSource = ({ stream, context }: Graph) =>
  `${stream.getAudioTracks()[0]?.getSettings().deviceId ?? ""} at ${context.sampleRate}`

const makeGraph = async (): Promise<Outcome<Graph>> => {
  if (!navigator.mediaDevices?.getUserMedia) return refuse("This browser gives no page a microphone.")
  let stream: MediaStream
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: constraints })
  } catch (error) {
    return refuse(whyNot[(error as DOMException).name] ?? "The microphone could not be opened.")
  }
  const context = new AudioContext({ latencyHint: "interactive" })
  try {
    await context.audioWorklet.addModule(workletUrl)
    const node = new AudioWorkletNode(context, workletName, { numberOfInputs: 1, numberOfOutputs: 0 })
    context.createMediaStreamSource(stream).connect(node)
    if (context.state !== "running") await context.resume()
    return done({ stream, context, node })
  } catch {
    await drop({ stream, context })
    return refuse("The sound of the microphone cannot be read in this browser.")
  }
}

const drop = async (graph: Pick<Graph, "stream" | "context"> | null) => {
  for (const track of graph?.stream.getTracks() ?? []) track.stop()
  if (graph && graph.context.state !== "closed") await graph.context.close().catch(() => {})
}
