/** @module Says a thing to those who listen instead of look. */

let region: HTMLElement | undefined;

/** The live region is made once and stays: readers only hear changes of a region that they know. */
export const readyToAnnounce = (): void => {
  if (region) return;
  region = document.createElement('div');
  region.setAttribute('role', 'status');
  region.setAttribute('aria-live', 'polite');
  region.className = 'heard-only';
  document.body.append(region);
};

export const announce = (words: string): void => {
  if (region) region.textContent = words;
};
