/** Puts the app on a made-up page and works it as a hand would: for the tests of the screen. */
import { act } from "react"
import { createRoot, type Root } from "react-dom/client"
import { App } from "../../src/app/App"
import { laterScreens } from "../../src/app/laterScreens"
import type { SessionView } from "../../src/app/Session"
import { createMadeUpSession, type MadeUpSession } from "./createMadeUpSession"

let root: Root
let page: HTMLElement

/** Before each test. */
export const layPage = async (): Promise<void> => {
  await Promise.all(Object.values(laterScreens).map((screen) => screen.fetch()))
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  page = document.createElement("div")
  document.body.append(page)
  root = createRoot(page)
}

/** After each test. */
export const clearPage = (): void => {
  act(() => root.unmount())
  page.remove()
}

/** Shows a view, on the screen of that name, and gives the session that notes what is asked of it. */
export const open = (view: SessionView, screen = ""): MadeUpSession => {
  window.location.hash = screen
  const session = createMadeUpSession(view)
  act(() => root.render(<App session={session} />))
  return session
}

/** Lets pass what the browser answers a little later. */
export const settle = (): Promise<void> => act(async () => undefined)

export const find = <Found extends Element = HTMLElement>(where: string): Found | null =>
  page.querySelector<Found>(where)

export const findAll = (where: string): Element[] => [...page.querySelectorAll(where)]

/** The texts of all elements that fit. */
export const words = (where: string): string[] => findAll(where).map((one) => one.textContent?.trim() ?? "")

/** The button of that name, or a failure that says so. */
export const button = (name: RegExp, within = "body"): HTMLElement => {
  const buttons = [...document.querySelectorAll<HTMLElement>(`${within} button`)]
  const found = buttons.find((one) => name.test(one.getAttribute("aria-label") ?? one.textContent ?? ""))
  if (!found) throw new Error(`There is no button ${name}`)
  return found
}

export const tap = (name: RegExp, within?: string): void => act(() => button(name, within).click())

/** Types into a field, or chooses in a list, as React hears of it. */
export const typeInto = (selector: string, text: string): void => {
  const field = find<HTMLInputElement | HTMLSelectElement>(selector)
  if (!field) throw new Error(`There is no field ${selector}`)
  const isList = field instanceof HTMLSelectElement
  const prototype = isList ? HTMLSelectElement.prototype : HTMLInputElement.prototype
  act(() => {
    Object.getOwnPropertyDescriptor(prototype, "value")?.set?.call(field, text)
    field.dispatchEvent(new Event(isList ? "change" : "input", { bubbles: true }))
  })
}

export const submit = (form: string): void =>
  act(() => {
    find(form)?.dispatchEvent(new Event("submit", { bubbles: true, cancelable: true }))
  })

export const press = (key: string, more: KeyboardEventInit = {}, target: EventTarget = document.body): void =>
  act(() => {
    target.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true, ...more }))
  })
