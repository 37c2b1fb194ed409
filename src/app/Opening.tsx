/** What is painted first, before anything that knows the trade is here. */
import { Brand } from "./parts/Brand"

/** `failed`: the rest of the app could not be fetched. */
export const Opening = ({ failed = false }: { failed?: boolean }) => (
  <main className="opening">
    <Brand />
    <h1>Bothhands</h1>
    {failed ? (
      <p role="alert">The app could not be loaded to its end. Stored jobs are untouched. Load the page again.</p>
    ) : (
      <p role="status">Looking for jobs on this device.</p>
    )}
  </main>
)
