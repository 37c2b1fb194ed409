/**
 * @vitest-environment happy-dom
 * Whatever can be said can be tapped, and the other way round: each wish and each screen with its sentence and its button.
 * A wish that is new in the schema fails here until it has both.
 */
import { afterEach, beforeEach, expect, test } from "vitest"
import { Command, screens } from "../../src/facts/Interpretation"
import { realInterpreter } from "../realTools"
import { madeUpViews } from "./madeUpViews"
import { button, clearPage, find, layPage, open, settle, tap } from "./page"

interface Way {
  wish: Command["kind"]
  says: string
  /** The view, the screen and the button that do the same; and what the tap asks of the session, or changes in the settings. */
  taps: [view: keyof typeof madeUpViews, screen: string, button: RegExp]
  does: unknown
}

const act = (kind: string) => ["send", { type: "tapped", act: { kind } }]

/** Each wish, as it is said and as it is tapped. */
const ways: Way[] = [
  { wish: "whats_left", says: "what's left", taps: ["busyJob", "now", /^What’s left/], does: act("whats_left") },
  {
    wish: "read_all_back",
    says: "read it all back",
    taps: ["busyJob", "now", /^Read it all/],
    does: act("read_all_back"),
  },
  { wish: "whats_next", says: "what next", taps: ["busyJob", "now", /^What next/], does: act("whats_next") },
  { wish: "smells_gas", says: "i smell gas", taps: ["busyJob", "now", /^I smell gas/], does: act("smells_gas") },
  { wish: "what_size", says: "what size", taps: ["busyJob", "now", /^What size/], does: act("what_size") },
  {
    wish: "what_should_it_read",
    says: "what should it read",
    taps: ["busyJob", "now", /^What should it read/],
    does: act("what_should_it_read"),
  },
  { wish: "how_long", says: "how long can it be", taps: ["busyJob", "now", /^How long/], does: act("how_long") },
  {
    wish: "what_did_i_say",
    says: "what did i say for the gas",
    taps: ["busyJob", "now", /^What did I say/],
    does: act("what_did_i_say"),
  },
  {
    wish: "start_over",
    says: "start this one over",
    taps: ["busyJob", "now", /^Start it over/],
    does: act("start_over"),
  },
  { wish: "keep_it", says: "keep it because existing", taps: ["warningOpen", "now", /^Keep/], does: null },
  { wish: "read_on", says: "read on", taps: ["readingWaits", "now", /^Yes/], does: act("confirm") },
  { wish: "stop_reading", says: "stop reading", taps: ["readingWaits", "now", /^No/], does: act("deny") },
  { wish: "louder", says: "louder", taps: ["start", "settings", /^Louder/], does: { volumeStep: 1 } },
  { wish: "quieter", says: "quieter", taps: ["start", "settings", /^Quieter/], does: { volumeStep: -1 } },
  { wish: "slower", says: "slower", taps: ["start", "settings", /^Slower/], does: { rateStep: -1 } },
  { wish: "faster", says: "faster", taps: ["start", "settings", /^Faster/], does: { rateStep: 1 } },
  {
    wish: "check_on_me",
    says: "check on me every ten minutes",
    taps: ["busyJob", "settings", /check/i],
    does: act("check_on_me"),
  },
  { wish: "all_right", says: "i'm all right", taps: ["alarm", "now", /all right/i], does: act("all_right") },
  { wish: "sign_off", says: "sign it off", taps: ["busyJob", "sign-off", /^Sign/], does: null },
  { wish: "put_away", says: "put the job away", taps: ["busyJob", "now", /^Leave/], does: ["closeJob"] },
  { wish: "stop_listening", says: "stop listening", taps: ["busyJob", "now", /^Stop/], does: ["listen", false] },
  { wish: "save", says: "save the job file", taps: ["busyJob", "record", /^Save the job file/], does: ["saveJobFile"] },
  { wish: "save", says: "save the report", taps: ["busyJob", "record", /^Save a report/], does: ["saveReport"] },
]

/** Done by something other than a button: chosen in the settings, tapped while it waits, or a screen of its own. */
const otherwise: Partial<Record<Command["kind"], string>> = {
  verbosity: "short answers",
  stop_checking: "stop checking on me",
  start_listening: "start listening",
  show: "show the picture",
}

const kinds = Command.options.map((option) => option.shape.kind.value)
const item = "gas"

beforeEach(layPage)
afterEach(clearPage)

test("no wish is missing from the table", () => {
  const known = [...ways.map(({ wish }) => wish), ...Object.keys(otherwise)]
  expect(kinds.filter((kind) => !known.includes(kind))).toEqual([])
})

test.each(ways)("$wish is understood when it is said: $says", ({ wish, says }) => {
  const asked = wish === "all_right" ? { asked: "check_in" } : {}
  expect(realInterpreter().interpret(says, { item, ...asked }).command?.kind).toBe(wish)
})

test.each(Object.entries(otherwise))("%s is understood when it is said: %s", (wish, says) => {
  expect(realInterpreter().interpret(says, { item }).command?.kind).toBe(wish)
})

test.each(ways)("$wish has its button: $taps", async ({ taps: [view, screen, name], does }) => {
  const session = open(madeUpViews[view](), screen)
  await settle()
  if (does === null) return expect(button(name).getAttribute("disabled")).toBeNull()
  tap(name)
  if (Array.isArray(does)) expect(session.asked).toMatchObject([does])
  else expect(session.settings.snapshot()).toMatchObject(does as object)
})

test.each(screens)("the screen %s has a sentence and a way by tap", (screen) => {
  const says: Record<(typeof screens)[number], string> = {
    now: "back to now",
    picture: "show the picture",
    record: "show the record",
    findings: "show me the findings",
    "sign-off": "show the sign off",
    settings: "show settings",
  }
  expect(realInterpreter().interpret(says[screen]).command).toEqual({ kind: "show", screen })
  open(madeUpViews.busyJob(), "now")
  expect(find(`a[href="#${screen}"]`)).not.toBeNull()
})
