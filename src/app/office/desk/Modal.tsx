/** A native modal dialog: the focus stays inside, Escape closes it, and closing gives the focus back to where it came from. */
import { type ReactNode, useEffect, useRef } from "react"

interface ModalProps {
  title: string
  close: () => void
  children: ReactNode
}

export const Modal = ({ title, close, children }: ModalProps) => {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    if (dialog.current && !dialog.current.open) dialog.current.showModal()
  }, [])
  return (
    <dialog ref={dialog} className="sheet desk-sheet" aria-labelledby="desk-sheet-head" onClose={close}>
      <header className="desk-sheet-head">
        <h2 id="desk-sheet-head">{title}</h2>
        <button type="button" className="small-button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </header>
      {children}
    </dialog>
  )
}
