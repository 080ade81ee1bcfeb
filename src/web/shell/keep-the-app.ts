/** @module Has the browser keep the app, so that a page loads anew while the network is away. */

/** Where the browser keeps nothing (a private window), the app works all the same while the server is there. */
export const keepTheApp = (): void => {
  if (!('serviceWorker' in navigator)) return;
  const keep = async () => {
    await navigator.serviceWorker.register('/sw.js');
    const { active } = await navigator.serviceWorker.ready;
    // What was fetched before the worker stood behind this page it has not seen.
    active?.postMessage(performance.getEntriesByType('resource').map(({ name }) => name));
  };
  keep().catch(() => undefined);
};
