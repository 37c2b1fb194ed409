/** `size` and `pack`: worked questions from the collected values, what comes back for a bad line, and the status. */
import { expect, test } from "vitest"
import { listPacks, showPack } from "../../src/cli/packs"
import { sizeLine, sizeLines } from "../../src/cli/sizeLines"
import { answerSize } from "../../src/rules/answerSize"
import { packs } from "../../src/rules/packs"
import type { SizeQuestion } from "../../src/rules/SizeQuestion"

const ask = (question: object) => {
  const answer = sizeLine(JSON.stringify(question))
  if (!answer.ok) throw new Error(answer.because)
  return answer.value
}
const refused = (question: object | string) => {
  const answer = sizeLine(typeof question === "string" ? question : JSON.stringify(question))
  return answer.ok ? "" : answer.because
}

test.each([
  [{ ask: "main_bond", arrangement: "TN-C-S", neutral_mm2: 25 }, 10, "direct", "544.1.1"],
  [{ ask: "main_bond", arrangement: "PME", neutral_mm2: 120 }, 35, "direct", "54.8"],
  [{ ask: "main_bond", arrangement: "TN-C-S", neutral_mm2: 95, copper_equivalent: false }, 25, "derived", "54.8"],
  [{ ask: "main_bond", arrangement: "TN-C-S", neutral_mm2: 50, copper_equivalent: false }, 10, "derived", "54.8"],
  [{ ask: "main_bond", arrangement: "TN-C-S", copper_equivalent: 70 }, 25, "direct", "54.8"],
  [{ ask: "main_bond", arrangement: "TN-S", earthing_conductor_mm2: 16 }, 10, "direct", "544.1.1"],
  [{ ask: "main_bond", arrangement: "TT", earthing_conductor_mm2: 2.5 }, 6, "direct", "544.1.1"],
  [{ ask: "earthing_conductor", line_mm2: 25 }, 16, "direct", "54.7"],
  [{ ask: "earthing_conductor", line_mm2: 95 }, 50, "direct", "54.7"],
  [{ ask: "earthing_conductor", line_mm2: 1.5 }, 4, "direct", "543.1.1"],
  [{ ask: "earthing_conductor", line_mm2: 1.5, mechanically_protected: true }, 2.5, "direct", "543.1.1"],
  [{ ask: "earthing_conductor", line_mm2: 10, buried: true }, 25, "direct", "54.1"],
  [{ ask: "earthing_conductor", line_mm2: 10, buried: true, corrosion_protected: true }, 16, "direct", "54.1"],
  [{ ask: "earthing_conductor", line_mm2: 10, buried: true, metal: "steel" }, 50, "direct", "54.1"],
  [
    {
      ask: "earthing_conductor",
      line_mm2: 6,
      buried: true,
      metal: "steel",
      corrosion_protected: true,
      mechanically_protected: true,
    },
    10,
    "memory",
    "54.1",
  ],
  [{ ask: "earthing_conductor", fault_a: 1500, seconds: 0.4, k: 143 }, 10, "derived", "543.1.3"],
  [{ ask: "earthing_conductor", line_mm2: 10, arrangement: "TN-C-S", neutral_mm2: 95 }, 25, "direct", "544.1.1"],
  [{ ask: "expected_ohms", csa_mm2: 10, length_m: 25 }, 0.04575, "derived", "60228"],
  [{ ask: "expected_ohms", csa_mm2: 16, length_m: 100, material: "Al" }, 0.191, "derived", "60228"],
  [{ ask: "expected_ohms", csa_mm2: 10, length_m: 100, conductor_class: 5 }, 0.191, "derived", "60228"],
  [{ ask: "expected_ohms", csa_mm2: 185, length_m: 1000, conductor_class: 1 }, 0.101, "derived", "60228"],
  [{ ask: "expected_ohms", csa_mm2: 185, length_m: 1000, conductor_class: 2 }, 0.0991, "derived", "60228"],
  [{ ask: "expected_ohms", csa_mm2: 185, length_m: 1000 }, 0.0991, "derived", "60228"],
  [{ ask: "longest_run", csa_mm2: 185, ohms: 0.101, conductor_class: 1 }, 1000, "derived", "60228"],
  [{ ask: "longest_run", csa_mm2: 185, ohms: 0.0991, conductor_class: 2 }, 1000, "derived", "60228"],
  [{ ask: "longest_run", csa_mm2: 185, ohms: 0.0991 }, 1000, "derived", "60228"],
  [{ ask: "longest_run", csa_mm2: 10, ohms: 0.191, conductor_class: 5 }, 100, "derived", "60228"],
  [{ ask: "longest_run", csa_mm2: 10, ohms: 0.308, material: "Al" }, 100, "derived", "60228"],
  [{ ask: "expected_ohms", csa_mm2: 10, length_m: 100, temperature_c: 70 }, 0.21896, "derived", "60228"],
  [{ ask: "longest_run", csa_mm2: 6, ohms: 0.05 }, 16.234, "derived", "60228"],
  [{ ask: "adiabatic", fault_a: 1500, seconds: 0.4, k: 143 }, 6.634, "derived", "543.1.3"],
  [{ ask: "temperature", ohms: 1, from_c: 20, to_c: 70 }, 1.2, "derived", "0.004"],
  [{ ask: "temperature", ohms: 1, from_c: 20, to_c: 70, alpha: 0.00393 }, 1.1965, "derived", "0.004"],
  [{ ask: "extraneous", milliamps: 10 }, 22000, "direct", "GN8"],
  [{ ask: "extraneous", milliamps: 10, body_ohms: 0 }, 23000, "direct", "GN8"],
  [{ ask: "extraneous", milliamps: 30 }, 6667, "direct", "GN8"],
  [{ ask: "extraneous", milliamps: 10, body_ohms: 22_999.5 }, 1, "direct", "GN8"],
  [{ ask: "extraneous", milliamps: 0.5 }, 459000, "derived", "GN8"],
  [{ ask: "extraneous", milliamps: 10, volts: 110 }, 10000, "direct", "GN8"],
  [{ ask: "supplementary", operating_a: 160 }, 0.3125, "derived", "415.2.2"],
  [{ ask: "supplementary", residual_ma: 30 }, 1666.66, "derived", "415.2.2"],
  [{ ask: "electrode", residual_ma: 100 }, 500, "derived", "41.5"],
  [{ ask: "max_zs", device: "B", rating_a: 32 }, 1.3656, "derived", "41.3"],
  [{ ask: "max_zs", device: "D", rating_a: 32, seconds: 5 }, 0.6828, "derived", "41.3"],
  [{ ask: "max_zs", device: "BS 3036", rating_a: 30 }, 1.04, "derived", "41.2"],
  [{ ask: "max_zs", device: "BS 1362", rating_a: 13, seconds: 5 }, 3.64, "memory", "41.4"],
  [{ ask: "zs", ze: 0.35, r1_r2: 0.61 }, 0.96, "derived", "Ze"],
  [{ ask: "zs", ze: 0.6, r1_r2: 0.302, warm_factor: 1.2 }, 0.9624, "derived", "Ze"],
  [{ ask: "r1_r2", line_mm2: 2.5, cpc_mm2: 1.5, length_m: 20 }, 0.3902, "derived", "60228"],
  [{ ask: "r1_r2", line_mm2: 2.5, cpc_mm2: 1.5, length_m: 20, temperature_c: 70 }, 0.46824, "derived", "60228"],
])("%j is %d", (question, value, status, clause) => {
  const answer = ask(question)
  expect(answer.value).toBeCloseTo(value, value < 100 ? 3 : 1)
  expect(answer.status).toBe(status)
  expect(answer.clause).toContain(clause)
  expect(answer.because.length).toBeGreaterThan(4)
  expect(Object.keys(answer)).toEqual(["value", "unit", "because", "clause", "status"])
})

test("six digits are given, and a limit is cut and never rounded up", () => {
  expect(ask({ ask: "longest_run", csa_mm2: 6, ohms: 0.05 }).value).toBe(16.2338)
  expect(ask({ ask: "electrode", residual_ma: 300 }).value).toBe(166.666)
  expect(ask({ ask: "max_zs", device: "B", rating_a: 3 }).value).toBe(14.5666)
})

test("the sum is in the reason, with the assumed error of the meter", () => {
  expect(ask({ ask: "expected_ohms", csa_mm2: 10, length_m: 26 }).because).toMatch(/26 m × 0.00183.*assumed/)
  expect(ask({ ask: "max_zs", device: "BS 88-3", rating_a: 16 }).because).toContain("book")
  expect(ask({ ask: "max_zs", device: "BS 3036", rating_a: 30 }).because).not.toContain("book")
  expect(ask({ ask: "adiabatic", fault_a: 1500, seconds: 0.4, k: 143 }).because).toContain("take 10 mm²")
  expect(ask({ ask: "adiabatic", fault_a: 100000, seconds: 5, k: 100 }).because).toContain("no size")
  expect(ask({ ask: "extraneous", milliamps: 10, body_ohms: 0 }).because).toContain("no body")
  expect(ask({ ask: "zs", ze: 1, r1_r2: 2, warm_factor: 1.2 }).because).toBe("1 + 2 × 1.2 Ω")
  expect(ask({ ask: "zs", ze: 1, r1_r2: 2 }).because).toBe("1 + 2 Ω")
  expect(ask({ ask: "main_bond", arrangement: "TN-S", earthing_conductor_mm2: 25 }).because).toMatch(
    /^half of 25 mm² is 12.5, /,
  )
  expect(ask({ ask: "expected_ohms", csa_mm2: 10, length_m: 26 }).because).toContain("at 20 °C (0.00393 per K)")
  expect(ask({ ask: "temperature", ohms: 2, from_c: 70, to_c: 5 }).because).toBe(
    "2 Ω × (1 + 0.004 × -15) / (1 + 0.004 × 50)",
  )
  expect(ask({ ask: "max_zs", device: "B", rating_a: 32 }).because).toBe(
    "230 V × 0.95 / 160 A, conductors warm; cold measure no more than 1.0925 Ω",
  )
  expect(ask({ ask: "max_zs", device: "BS 3036", rating_a: 30 }).because).toMatch(/^by the table/)
  expect(ask({ ask: "earthing_conductor", line_mm2: 25 }).because).toBe(
    "line conductor 25 mm²: 16 mm²; on its own, not mechanically protected: 4 mm²",
  )
})

test.each([
  ["nonsense", /JSON/],
  ["[]", /object/],
  ['{"ask":"cake"}', /main_bond/],
  [{ ask: "main_bond", arrangement: "TN-C-S" }, /neutral_mm2/],
  [{ ask: "main_bond", arrangement: "TT" }, /earthing_conductor_mm2/],
  [{ ask: "main_bond", arrangement: "TN-C-S", neutral_mm2: 6, copper_equivalent: false }, /6 square aluminium/],
  [{ ask: "main_bond", arrangement: "IT", neutral_mm2: 25 }, /arrangement/],
  [{ ask: "main_bond", arrangement: "TT", earthing_conductor_mm2: -4 }, /earthing_conductor_mm2/],
  [{ ask: "earthing_conductor" }, /line conductor/],
  [{ ask: "earthing_conductor", fault_a: 1500, k: 143 }, /all three/],
  [{ ask: "earthing_conductor", line_mm2: 10, arrangement: "PME" }, /neutral_mm2/],
  [{ ask: "earthing_conductor", line_mm2: 600 }, /larger than any size/],
  [{ ask: "expected_ohms", csa_mm2: 7, length_m: 10 }, /no figure for 7/],
  [{ ask: "longest_run", csa_mm2: 7, ohms: 1 }, /no figure for 7/],
  [{ ask: "adiabatic", fault_a: 1500, seconds: 5.1, k: 143 }, /five seconds/],
  [{ ask: "extraneous", milliamps: 10, body_ohms: 23000 }, /never reached/],
  [{ ask: "expected_ohms", csa_mm2: 10, length_m: 10, conductor_class: 3 }, /conductor_class/],
  [{ ask: "longest_run", csa_mm2: 10, ohms: 1, conductor_class: 6 }, /conductor_class/],
  [{ ask: "supplementary" }, /operating_a/],
  [{ ask: "max_zs", device: "BS 1362", rating_a: 5 }, /no figure/],
  [{ ask: "zs", ze: "0.35", r1_r2: 1 }, /ze/],
  [{ ask: "zs", ze: 0.35, r1_r2: 1, colour: "red" }, /colour/],
])("%j is refused in plain words", (question, because) => {
  expect(refused(question)).toMatch(because)
})

test("answers keep the order of the questions, and a bad line costs only itself", async () => {
  const said: string[] = []
  const complaints: string[] = []
  const io = { print: (line: string) => void said.push(line), complain: (line: string) => void complaints.push(line) }
  const status = await sizeLines(
    ['{"ask":"electrode","residual_ma":30}', "", "oops", '{"ask":"electrode","residual_ma":300}'],
    io,
  )
  expect(status).toBe(2)
  expect(said.map((line) => JSON.parse(line).value)).toEqual([1666.66, 166.666])
  expect(complaints).toEqual(["line 3: This is not JSON."])
  expect(await sizeLines(['{"ask":"electrode","residual_ma":30}'], io)).toBe(0)
})

test("a question may also be asked without its text", () => {
  const question: SizeQuestion = { ask: "electrode", residual_ma: 500 }
  expect(answerSize(question)).toMatchObject({ ok: true, value: { value: 100 } })
})

test("packs are listed, shown whole from their own figures, and an unknown one is refused", () => {
  const said: string[] = []
  const complaints: string[] = []
  const io = { print: (line: string) => void said.push(line), complain: (line: string) => void complaints.push(line) }
  expect(listPacks(io)).toBe(0)
  expect(said.map((line) => line.split("\t")[0])).toEqual(["uk-bs7671", "iec-60364", "us-nec", "au-nz-3000"])
  for (const pack of packs) {
    said.length = 0
    expect(showPack(pack.id, io)).toBe(0)
    const text = said.join("\n")
    expect(text).toContain(pack.edition)
    expect(text).toContain(pack.newer)
    for (const rule of pack.rules) expect(text).toContain(`| ${rule.name} | ${rule.title}`)
    for (const table of pack.tables) expect(text).toContain(`### ${table.title}`)
    expect(text.includes("thin: for orientation")).toBe(pack.thin)
  }
  said.length = 0
  showPack("uk-bs7671", io)
  expect(said).toContain("| any | 50 |")
  expect(said).toContain("| true | true | copper | 2.5 |  |")
  expect(said).toContain("| true | true | steel | 10 | memory |")
  expect(showPack("nowhere", io)).toBe(2)
  expect(showPack(undefined, io)).toBe(2)
  expect(complaints).toHaveLength(2)
})
