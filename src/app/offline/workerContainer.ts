/** Where service workers are kept: none in development, and none on a page that came over plain http from elsewhere. */
export const workerContainer = (): ServiceWorkerContainer | undefined =>
  import.meta.env.PROD && "serviceWorker" in navigator ? navigator.serviceWorker : undefined
