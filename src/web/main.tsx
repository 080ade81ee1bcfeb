/** @module Puts the app on the page. */
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import '@fontsource-variable/atkinson-hyperlegible-mono/wght.css';
import './styles/paper.css';
import './styles/frame.css';
import './styles/body.css';
import './styles/controls.css';
import './styles/run.css';
import './styles/work.css';
import './styles/tighten.css';
import './styles/narrow.css';
import './styles/print.css';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { waitingKey } from './journal/waiting-line.ts';
import { readyToAnnounce } from './shell/announce.ts';
import { keepTheApp } from './shell/keep-the-app.ts';

const queries = new QueryClient({ defaultOptions: { queries: { staleTime: 5000, retry: 1 } } });
const root = document.querySelector('#root');
if (!root) throw new Error('the page has no root to draw on');
readyToAnnounce();
/** A fault in the program must not look like lost work: what was typed is in the journal or in this browser. */
const fault = (): void => {
  root.textContent =
    'A fault in the program stopped this page. Nothing that you took is lost: load the page again. If it comes back, report what you did.';
};
createRoot(root, { onUncaughtError: fault }).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);

// What an earlier page could not send is sent now, whichever sheet is opened.
if (Object.keys(localStorage).some((key) => key.startsWith(waitingKey)))
  void import('./journal/use-desk.tsx').then(({ takeUpWaiting }) => takeUpWaiting());

if (import.meta.env.PROD) keepTheApp();
