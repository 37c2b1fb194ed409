/**
 * The ear on the microphone. Where its pack is on the device already it is loaded at once, beside what else the page
 * fetches, so that the tap that starts it need not wait; no microphone is opened for that. A first visit downloads
 * nothing here that was not asked for.
 */
import { createOfflineListener } from "../speech/offlineListener"
import { earPlace } from "./earPlace"

export const openEar = (isOnDevice: boolean) => {
  const ear = createOfflineListener({ assets: earPlace })
  if (isOnDevice) void ear.warm()
  return ear
}
