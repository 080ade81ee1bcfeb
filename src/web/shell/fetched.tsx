/** @module What stands where a list of the workshop is not there yet, or cannot be had. */

/** A query as far as this needs it. */
interface Fetching {
  readonly isPending: boolean;
  readonly isError: boolean;
}

export const Fetched = ({
  query,
  what,
  still,
}: {
  readonly query: Fetching;
  /** What is fetched: `the register`. */
  readonly what: string;
  /** What can be done all the same. */
  readonly still?: string;
}) => (
  <>
    {query.isPending ? <p>Fetching {what} …</p> : null}
    {query.isError ? (
      <p className="note" role="alert">
        The workshop’s store does not answer, so {what} cannot be shown.{still ? ` ${still}` : ''} Look
        whether the server runs.
      </p>
    ) : null}
  </>
);
