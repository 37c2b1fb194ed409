/**
 * To be imported before the engine in a worker. The engine's package pulls in a stand-in for old browsers' `Blob`
 * (blob-polyfill 7.0), which asks a document for its style as soon as it loads, and a worker has none.
 */
if (!("document" in globalThis)) Object.assign(globalThis, { document: { documentElement: { style: {} } } })

export {}
