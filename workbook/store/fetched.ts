/** What is said where a part of the program could not be fetched. */
export const NOT_FETCHED =
  'This part of the program is fetched when it is asked for first, and it could not be: there is no connection, and the page does not stand in this browser for use without one yet. Connect, open the page once more, and do it again. The design is as it was.';

/** A part of the program that comes when it is asked for first; where it doesn't, an error that says what to do. */
export async function fetched<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch {
    throw new Error(NOT_FETCHED);
  }
}
