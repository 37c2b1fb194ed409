/**
 * The recogniser's WebAssembly module with the calls under its own wrapper, typed. The wrapper fetches each file by
 * address, and in a page that falls back to its start page a missing optional file comes back as HTML; so the pack's
 * bytes are handed over in memory instead, by the same path in the browser and in Node.
 * Written against soundswallower 0.6.3.
 */
import createModule, { type Decoder } from "soundswallower"

/** An address inside the module's memory. */
export type Pointer = number

/** The part of the module that the ear uses. */
export interface Engine {
  HEAPU8: Uint8Array
  HEAPF32: Float32Array
  HEAP32: Int32Array
  Decoder: new (config: Record<string, unknown>) => Decoder & { cdecoder: Pointer }
  _malloc(bytes: number): Pointer
  _free(at: Pointer): void
  _s3file_init(at: Pointer, bytes: number): Pointer
  _s3file_free(file: Pointer): void
  _decoder_init_cleanup(decoder: Pointer): number
  _decoder_init_fe(decoder: Pointer): Pointer
  _decoder_init_feat_s3file(decoder: Pointer, lda: Pointer): Pointer
  _decoder_init_acmod_pre(decoder: Pointer): Pointer
  _decoder_init_acmod_post(decoder: Pointer): number
  _decoder_init_dict_s3file(decoder: Pointer, dictionary: Pointer, fillers: Pointer): Pointer
  _decoder_logmath(decoder: Pointer): Pointer
  _decoder_set_fsg(decoder: Pointer, fsg: Pointer): number
  _decoder_hyp(decoder: Pointer, scoreAt: Pointer): Pointer
  _bin_mdef_read_s3file(file: Pointer, ciOnly: boolean): Pointer
  _set_mdef(decoder: Pointer, mdef: Pointer): void
  _tmat_init_s3file(file: Pointer, logmath: Pointer, floor: number): Pointer
  _set_tmat(decoder: Pointer, tmat: Pointer): void
  _load_gmm(decoder: Pointer, means: Pointer, variances: Pointer, mixw: Pointer, sendump: Pointer): number
  _jsgf_parse_string(text: Pointer, parent: Pointer): Pointer
  _jsgf_get_public_rule(grammar: Pointer): Pointer
  _jsgf_build_fsg(grammar: Pointer, rule: Pointer, logmath: Pointer, weight: number): Pointer
  _fsg_model_init(name: Pointer, logmath: Pointer, weight: number, states: number): Pointer
  _fsg_model_word_add(fsg: Pointer, word: Pointer): number
  _fsg_model_trans_add(fsg: Pointer, from: number, to: number, logProbability: number, word: number): void
  _fsg_model_null_trans_add(fsg: Pointer, from: number, to: number, logProbability: number): number
  _fsg_set_states(fsg: Pointer, start: number, final: number): void
  _jsgf_grammar_free(grammar: Pointer): void
}

/** Starts one module. Each has a memory of its own that never shrinks, so make one for the life of the page. */
export const loadEngine = async (): Promise<Engine> => {
  // The engine reports a refused word on its error output; the ear says so itself, in words fit to be spoken.
  const quiet = { print: () => {}, printErr: () => {}, defaultModel: null }
  return (await createModule(quiet as object)) as unknown as Engine
}

/** Copies bytes into the module's memory behind a zero, which its text readers look for. */
export const copyIn = (engine: Engine, bytes: Uint8Array): Pointer => {
  const at = engine._malloc(bytes.length + 1)
  if (at === 0) throw new Error(`The recogniser has no room for ${bytes.length} bytes`)
  engine.HEAPU8.set(bytes, at)
  engine.HEAPU8[at + bytes.length] = 0
  return at
}
