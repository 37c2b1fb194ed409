/** The ways to reach the person that the worker named. */
import { Icon } from "../parts/Icon"

/** What a link may hold of a number as it was typed. */
const dialled = (contact: string) => contact.replace(/[^\d+]/g, "")

export const ContactWays = ({ contact }: { contact: string }) =>
  contact === "" ? null : (
    <div className="way-row">
      <a className="button" href={`tel:${dialled(contact)}`}>
        <Icon name="phone" />
        <span>Call {contact}</span>
      </a>
      <a className="button" href={`sms:${dialled(contact)}`}>
        <Icon name="send" />
        <span>Message {contact}</span>
      </a>
    </div>
  )
