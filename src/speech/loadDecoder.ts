/**
 * Builds one decoder from a pack in memory. A deleted decoder does not give all its memory back (706 MB after eighty,
 * soundswallower 0.6.3), so there are as few as can be and each is kept for the life of its module.
 */
import type { Decoder } from "soundswallower"
import type { EarFileName, EarFiles } from "./EarPack"
import { copyIn, type Engine, type Pointer } from "./engine"

/** Floor of a transition probability; the engine's own default. */
const transitionFloor = 0.0001

export type RawDecoder = Decoder & { cdecoder: Pointer }

/** Throws if the files are not a model that the engine can read: a pack is checked when it is made, not here. */
export const loadDecoder = (engine: Engine, files: EarFiles, settings: Record<string, unknown> = {}): RawDecoder => {
  const features = JSON.parse(new TextDecoder().decode(files.bytes["feat_params.json"])) as Record<string, unknown>
  const decoder = new engine.Decoder({ loglevel: "FATAL", samprate: files.pack.rateHz, ...features, ...settings })
  const at = decoder.cdecoder
  const open = (name: EarFileName) => {
    const bytes = files.bytes[name]
    const from = copyIn(engine, bytes)
    return { from, file: engine._s3file_init(from, bytes.length) }
  }
  const close = (opened: { from: Pointer; file: Pointer }) => {
    engine._s3file_free(opened.file)
    engine._free(opened.from)
  }
  const must = (step: string, ok: boolean) => {
    if (!ok) throw new Error(`The recogniser cannot read its ${step}`)
  }

  must("settings", engine._decoder_init_cleanup(at) >= 0 && engine._decoder_init_fe(at) !== 0)
  must("features", engine._decoder_init_feat_s3file(at, 0) !== 0 && engine._decoder_init_acmod_pre(at) !== 0)

  // The model definition and the mixture weights are used where they lie, so their bytes stay.
  const mdefFile = open("mdef")
  const mdef = engine._bin_mdef_read_s3file(mdefFile.file, false)
  must("model definition", mdef !== 0)
  engine._set_mdef(at, mdef)

  const tmatFile = open("transition_matrices")
  const tmat = engine._tmat_init_s3file(tmatFile.file, engine._decoder_logmath(at), transitionFloor)
  must("transitions", tmat !== 0)
  engine._set_tmat(at, tmat)
  close(tmatFile)

  const [means, variances, sendump] = [open("means"), open("variances"), open("sendump")]
  must("sound model", engine._load_gmm(at, means.file, variances.file, 0, sendump.file) >= 0)
  must("sound model", engine._decoder_init_acmod_post(at) >= 0)
  close(means)
  close(variances)

  const [dictionary, noises] = [open("dictionary.txt"), open("noisedict.txt")]
  must("dictionary", engine._decoder_init_dict_s3file(at, dictionary.file, noises.file) !== 0)
  close(dictionary)
  close(noises)

  decoder.initialized = true
  return decoder
}
