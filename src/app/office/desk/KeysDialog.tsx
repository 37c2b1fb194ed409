/** The keys of the desk, on the screen. */
import { deskKeys } from "./deskKeys"
import { Modal } from "./Modal"

export const KeysDialog = ({ close }: { close: () => void }) => (
  <Modal title="Keys" close={close}>
    <dl className="key-list">
      {deskKeys.map(({ shown, does }) => (
        <div key={shown}>
          <dt>
            <kbd>{shown}</kbd>
          </dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  </Modal>
)
