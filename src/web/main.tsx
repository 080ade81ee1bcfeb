/** @module Puts the app on the page. */
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import '@fontsource-variable/atkinson-hyperlegible-mono/wght.css';
import './styles/sheet.css';
import './styles/controls.css';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { waitingKey } from './journal/waiting-line.ts';
import { readyToAnnounce } from './shell/announce.ts';

const queries = new QueryClient({ defaultOptions: { queries: { staleTime: 5000, retry: 1 } } });
const root = document.querySelector('#root');
if (!root) throw new Error('the page has no root to draw on');
readyToAnnounce();
createRoot(root).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);

// What an earlier page could not send is sent now, whichever sheet is opened.
if (Object.keys(localStorage).some((key) => key.startsWith(waitingKey)))
  void import('./journal/use-desk.tsx').then(({ takeUpWaiting }) => takeUpWaiting());
