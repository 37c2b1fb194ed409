/** Traces of the browser's recogniser as they were reported from the field, with our own phrases in them. */
import type { TraceEvent } from "./fakeRecognition"

const whole = "water bond ten millimetre"

/** Traces whose only right outcome is what was said, once each, waiting for a yes. */
export const spoken: readonly (readonly [
  id: string,
  source: string,
  says: readonly string[],
  trace: readonly TraceEvent[],
])[] = [
  [
    "S01 A",
    "willdady/platypus#779",
    [whole],
    [
      { t: 600, ev: "result", results: [[true, "water", 0.9]] },
      {
        t: 900,
        ev: "result",
        results: [
          [true, "water", 0.9],
          [true, "water bond", 0.9],
        ],
      },
      {
        t: 1500,
        ev: "result",
        results: [
          [true, "water", 0.9],
          [true, "water bond", 0.9],
          [true, "water bond ten", 0.9],
        ],
      },
      {
        t: 1900,
        ev: "result",
        results: [
          [true, "water", 0.9],
          [true, "water bond", 0.9],
          [true, "water bond ten", 0.9],
          [true, whole, 0.9],
        ],
      },
      { t: 2300, ev: "end" },
    ],
  ],
  [
    "S01 B",
    "TalAter/annyang#130",
    [whole],
    [
      { t: 900, ev: "result", results: [[true, "water bond", 0.9]] },
      {
        t: 2100,
        ev: "result",
        results: [
          [true, "water bond", 0.9],
          [true, "ten millimetre", 0.9],
        ],
      },
      {
        t: 4000,
        ev: "result",
        results: [
          [true, "water bond", 0.9],
          [true, "ten millimetre", 0.9],
          [true, whole, 0.9, ["water bond tin millimetre"]],
        ],
      },
      { t: 4010, ev: "end" },
    ],
  ],
  [
    "S01 C",
    "willdady/platypus#771",
    [whole],
    [
      { t: 900, ev: "result", results: [[true, "water bond", 0.9]] },
      {
        t: 2100,
        ev: "result",
        results: [
          [true, "water bond", 0.9],
          [true, "ten millimetre", 0.9],
        ],
      },
      { t: 2400, ev: "end" },
    ],
  ],
  [
    "S02 A",
    "JamesBrill/react-speech-recognition#31",
    [whole],
    [
      { t: 700, ev: "result", results: [[true, "water bond", 0]] },
      { t: 1200, ev: "result", results: [[true, "water bond ten", 0]] },
      { t: 1800, ev: "result", results: [[true, whole, 0.87]] },
      { t: 1960, ev: "result", results: [[true, whole, 0.87]] },
      { t: 2000, ev: "end" },
    ],
  ],
  [
    "S02 B",
    "ccoreilly/vosk-browser#68",
    [whole],
    [
      { t: 1800, ev: "result", results: [[true, whole, 0]] },
      { t: 2000, ev: "end" },
    ],
  ],
  [
    "S03 A",
    "jamsch/expo-speech-recognition#22",
    [whole, "earth rod"],
    [
      { t: 900, ev: "result", results: [[false, "water bond", 0]] },
      { t: 1500, ev: "result", results: [[false, whole, 0]] },
      { t: 5200, ev: "result", results: [[false, "earth", 0]] },
      { t: 5600, ev: "result", results: [[false, "earth rod", 0]] },
      { t: 9300, ev: "end" },
    ],
  ],
  [
    "S03 B",
    "csdcorp/speech_to_text#565",
    [whole],
    [
      { t: 1500, ev: "result", results: [[false, whole, 0]] },
      { t: 1700, ev: "result", results: [[true, "", 0]] },
      { t: 1750, ev: "end" },
    ],
  ],
  [
    "S21 A",
    "mdn/content#11797",
    ["Water bond ten millimetre"],
    [
      { t: 1700, ev: "result", results: [[true, "Water bond ten millimetre.", 0.9]] },
      { t: 1800, ev: "end" },
    ],
  ],
  [
    "S21 C",
    "Azure-Samples/cognitive-services-speech-sdk#417",
    ["Water bond Ten millimetre"],
    [
      { t: 1700, ev: "result", results: [[true, "Water bond.", 0.9]] },
      {
        t: 2900,
        ev: "result",
        results: [
          [true, "Water bond.", 0.9],
          [true, "Ten millimetre.", 0.9],
        ],
      },
      { t: 3000, ev: "end" },
    ],
  ],
]
