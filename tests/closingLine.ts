/** A reporter that ends every run with one plain line: so many passed, so many failed. */
import type { Reporter, TestModule } from "vitest/node"

export class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]) {
    const tally = { passed: 0, failed: 0, skipped: 0 }
    for (const module of modules) {
      let ran = 0
      for (const test of module.children.allTests()) {
        const { state } = test.result()
        if (state in tally) tally[state as keyof typeof tally] += 1
        ran += 1
      }
      // A file that fails before its first test has no test to count, and must still count as a failure.
      if (ran === 0 && module.state() === "failed") tally.failed += 1
    }
    const skipped = tally.skipped ? `, ${tally.skipped} skipped` : ""
    process.stdout.write(`\n${tally.passed} passed, ${tally.failed} failed${skipped}\n`)
  }
}
