/**
 * Takes private words out of a sentence for good. The words are chosen by their first and their last, so that it goes by
 * keys alone; places that repeat them are named, since those stay.
 */
import { useState } from "react"
import type { Outcome } from "../../../facts/Outcome"
import type { LogLine } from "../../../record/LogLine"
import { repeatsOf, type Stretch, struckMark } from "../../../record/strike"
import type { ReviewedJob } from "../../../review/ReviewedJob"
import { readReason } from "../../../review/readReason"
import { PanelForm } from "./PanelForm"

interface StrikeProps {
  line: Extract<LogLine, { type: "heard" }>
  job: ReviewedJob
  strike: (stretches: readonly Stretch[]) => Promise<Outcome>
  cancel: () => void
}

interface Place {
  text: string
  from: number
  to: number
}

const placesIn = (text: string): Place[] =>
  [...text.matchAll(/\S+/g)].map((found) => ({ text: found[0], from: found.index, to: found.index + found[0].length }))

const WordChoice = ({ id, label, places, value, set }: WordProps) => (
  <div>
    <label htmlFor={id}>{label}</label>
    <select id={id} value={value} onChange={(event) => set(Number(event.target.value))}>
      {places.map((place, index) => (
        <option key={place.from} value={index}>
          {index + 1}. {place.text}
        </option>
      ))}
    </select>
  </div>
)

interface WordProps {
  id: string
  label: string
  places: readonly Place[]
  value: number
  set: (index: number) => void
}

const placeNames: Partial<Record<LogLine["type"], string>> = {
  heard: "another sentence",
  said: "what the app said back",
  entry: "a note",
  kept: "the reason for keeping a warning",
}

type Repeat = ReturnType<typeof repeatsOf>[number]

const Repeats = ({ job, repeats, also, setAlso }: RepeatsProps) => {
  if (repeats.length === 0) return null
  const kinds = repeats.map(({ of }) => job.lines.find((line) => line.id === of)?.type ?? "said")
  const places = [...new Set(kinds.map((kind) => placeNames[kind] ?? kind))]
  return (
    <label className="role-choice">
      <input type="checkbox" checked={also} onChange={(event) => setAlso(event.target.checked)} />
      <span>
        Strike the same words also where they are repeated, {repeats.length === 1 ? "once" : `${repeats.length} times`}:
        in {places.join(", in ")}
      </span>
    </label>
  )
}

interface RepeatsProps {
  job: ReviewedJob
  repeats: readonly Repeat[]
  also: boolean
  setAlso: (also: boolean) => void
}

export const StrikePanel = ({ line, job, strike, cancel }: StrikeProps) => {
  const { heard } = line
  const places = placesIn(heard.text)
  const [first, setFirst] = useState(0)
  const [last, setLast] = useState(0)
  const [also, setAlso] = useState(false)
  const from = places[first]?.from ?? 0
  const to = places[Math.max(first, last)]?.to ?? 0
  const repeats = repeatsOf(job.lines, line.id, heard.text.slice(from, to))
  const submit = async (reason: string): Promise<Outcome> => {
    const because = readReason(reason)
    if (!because.ok) return because
    const stretches = [{ of: line.id, from, to }, ...(also ? repeats : [])]
    return strike(stretches.map((one) => ({ ...one, because: because.value })))
  }
  const below = (
    <p className="quiet">
      The words, their sound where it was kept, and the ear’s other readings of this sentence are gone from this device
      for good; values stay. Files that were saved before still hold the words.
    </p>
  )
  return (
    <PanelForm head="Strike private words" doIt="Strike for good" below={below} submit={submit} cancel={cancel}>
      <div className="word-choices">
        <WordChoice id="strike-first" label="From" places={places} value={first} set={setFirst} />
        <WordChoice id="strike-last" label="To" places={places} value={Math.max(first, last)} set={setLast} />
      </div>
      <p aria-live="polite">
        It will read: “{heard.text.slice(0, from)}
        <strong>{struckMark}</strong>
        {heard.text.slice(to)}”
      </p>
      <Repeats job={job} repeats={repeats} also={also} setAlso={setAlso} />
    </PanelForm>
  )
}
