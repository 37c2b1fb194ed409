/**
 * Tells zod not to compile its checks with `eval`, which the page's security policy blocks. Schemas ask once, when they
 * are made, so this must be imported before anything that makes one.
 */
import { config } from "zod"

config({ jitless: true })
