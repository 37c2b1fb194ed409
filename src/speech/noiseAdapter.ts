/**
 * Fits the sound model to the noise behind each utterance and to the voice. A steady noise is added to every sound of the
 * model. One that wavers, such as talk or a radio, cannot be foretold: a model that expects its mean hears words in all that
 * is louder or softer. There the model stays as it was trained, and only the voice is allowed for.
 */
import { createCepstraTransform } from "./cepstra"
import { compensateModel, shiftModel } from "./compensateModel"
import type { EarFiles } from "./EarPack"
import type { Engine } from "./engine"
import { hearNoise } from "./hearNoise"
import type { RawDecoder } from "./loadDecoder"
import { findModelMemory } from "./modelMemory"
import { readGaussians } from "./readGaussians"
import { createUsualVoice, type HeardVoice } from "./usualVoice"

/** What stood behind an utterance. */
export interface Behind {
  /** How far the loudest of it stands above the quietest, in decibels; endless where that cannot be told. */
  snrDb: number
  /** Whether the noise wavers, as talk does. */
  wavers: boolean
  /** Whether the voice is one that was never heard before. */
  isNewVoice: boolean
}

export const nothingBehind: Behind = { snrDb: Number.POSITIVE_INFINITY, wavers: false, isNewVoice: false }

export interface NoiseAdapter {
  /**
   * Fits all decoders to the sound that is to be decoded next, and tells what stands behind it. `before` is what was
   * heard right before it.
   */
  fit(samples: Float32Array, before?: Float32Array): Behind
  /** What was fitted to last held words of the voice that is listened to. */
  remember(): void
  /** Another microphone, room or person. */
  forget(): void
}

/**
 * From here on a noise wavers, in nepers. White and pink noise and a drill-like buzz give 0.08 to 0.13, five voices at once
 * 0.55 to 1.5 (14 utterances each, from 5 to 20 dB).
 */
const waversFrom = 0.3

/** Where the engine's model is not found, all stays as it was trained. */
export const createNoiseAdapter = (engine: Engine, files: EarFiles, decoders: RawDecoder[]): NoiseAdapter => {
  const [means, variances] = [readGaussians(files.bytes.means), readGaussians(files.bytes.variances)]
  const settings = JSON.parse(new TextDecoder().decode(files.bytes["feat_params.json"])) as Record<string, number>
  const [decoder] = decoders
  const trained = means && variances && { means: means.values, variances: variances.values }
  const memory = trained && findModelMemory(engine, trained, decoders.length)
  if (!memory || !decoder) return { fit: () => nothingBehind, remember: () => {}, forget: () => {} }
  const transform = createCepstraTransform(settings.nfilt ?? 0, settings.lifter ?? 0)

  // What wavers is heard with its noise, so its mean is another one.
  const newVoices = () => ({ inSteady: createUsualVoice(), inWavering: createUsualVoice() })
  let voices = newVoices()
  let last: { voice: keyof typeof voices; heard: HeardVoice } | null = null

  return {
    fit: (samples, before) => {
      const { data, nfeat } = decoder.spectrogram(samples)
      if (nfeat !== transform.bands || data.length === 0) return nothingBehind
      const alone = before && before.length > 0 ? decoder.spectrogram(before).data : undefined
      const sound = hearNoise({ data, bands: nfeat }, alone)
      const isSteady = sound.wavers < waversFrom
      const mean = isSteady ? sound.cleanMean : sound.heardMean
      last = {
        voice: isSteady ? "inSteady" : "inWavering",
        heard: { mean, loudness: sound.loudness, frames: data.length / nfeat },
      }
      const usual = { ...sound, cleanMean: voices[last.voice].meanWith(last.heard) }
      memory.write((isSteady ? compensateModel : shiftModel)(means, variances, transform, usual))
      return { snrDb: sound.snrDb, wavers: !isSteady, isNewVoice: voices[last.voice].isNew }
    },
    remember: () => {
      if (last) voices[last.voice].remember(last.heard)
      last = null
    },
    forget: () => {
      voices = newVoices()
      last = null
    },
  }
}
