/** How the thread that measures can break. Each is said behind "A fault of ours:", with the way to try again. */
export const ENGINE_WORDS = {
  ended:
    'the part of the page that measures ended by itself, as it does where memory runs out; it was started anew',
  unread: 'the part of the page that measures was not understood; it was started anew',
  notLoaded: 'the part of the page that measures could not be loaded; without a network it cannot be',
  noMemory: (why: string) => `the memory of this browser ran out (${why}); a smaller scan needs less`,
} as const;

/** What browsers throw where there is no room for a buffer: they have no name for it but their words. */
const NO_ROOM = /allocation failed|out of memory|could not allocate|invalid (typed )?array (buffer )?length/i;

/** Why work broke, as it is said: that memory ran out is told as such. */
export function faultOf(thrown: unknown): string {
  const why = thrown instanceof Error ? thrown.message : String(thrown);
  return NO_ROOM.test(why) ? ENGINE_WORDS.noMemory(why) : why;
}
