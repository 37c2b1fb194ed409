/** The words of a grammar, and nothing else of it. */
import { expect, test } from "vitest"
import { jsgfWords } from "../../src/speech/jsgfWords"

test("headers, rule names, weights, tags and comments are no words", () => {
  const text = `#JSGF V1.0 UTF-8 en-GB;
    grammar ear_open;
    /** A reading. @example water bond nought point one */
    public <open> = /4/ <part> bond {reading} | (that's | isn't) right+ [what's]; // the rest
    <part> = water | gas* | public toilet;`
  expect(jsgfWords(text)).toEqual(["bond", "that's", "isn't", "right", "what's", "water", "gas", "public", "toilet"])
})

test("each word comes once, and an empty rule has none", () => {
  expect(jsgfWords("#JSGF V1.0; grammar g; public <g> = no | no no;")).toEqual(["no"])
  expect(jsgfWords("#JSGF V1.0; grammar g; public <g> = <NULL>;")).toEqual([])
})
