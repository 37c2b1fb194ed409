/** A sentence typed instead of spoken, the two long answers, and the keys that answer. */
import { useState } from "react"
import type { DialogueState } from "../../dialogue/DialogueState"
import { Icon } from "../parts/Icon"
import type { Session } from "../Session"
import { MoreAsks } from "./MoreAsks"
import { answerKeys } from "./useAnswerKeys"

const Sentence = ({ session }: { session: Session }) => {
  const [words, setWords] = useState("")
  return (
    <form
      className="sentence"
      onSubmit={(event) => {
        event.preventDefault()
        if (!words.trim()) return
        session.type(words.trim())
        setWords("")
      }}
    >
      <label htmlFor="sentence">Or type it</label>
      <div className="sentence-row">
        <input
          id="sentence"
          value={words}
          maxLength={500}
          autoComplete="off"
          placeholder="gas, ten square"
          onChange={(event) => setWords(event.target.value)}
        />
        <button type="submit">
          <Icon name="send" />
          <span>Send</span>
        </button>
      </div>
    </form>
  )
}

const Keys = () => (
  <p className="keys">
    {answerKeys.map(([key, does]) => (
      <span key={key}>
        <kbd>{key}</kbd> {does}
      </span>
    ))}
  </p>
)

export const Typing = ({ dialogue, session }: { dialogue: DialogueState; session: Session }) => (
  <section className="typing" aria-label="Other ways to say it">
    <div className="long-answers">
      <button type="button" onClick={() => session.send({ type: "tapped", act: { kind: "whats_left" } })}>
        <Icon name="left" />
        <span>What’s left</span>
      </button>
      <button type="button" onClick={() => session.send({ type: "tapped", act: { kind: "read_all_back" } })}>
        <Icon name="all" />
        <span>Read it all back</span>
      </button>
    </div>
    <MoreAsks dialogue={dialogue} session={session} />
    <Sentence session={session} />
    <Keys />
  </section>
)
