/** @module Which screen stands at which address. */
import { lazy, Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { JobsScreen } from './jobs/jobs-screen.tsx';
import { Sheet } from './shell/sheet.tsx';
import { SignOn } from './shell/sign-on.tsx';

// What reads engine types and decides weighs more than the list of jobs: it comes when a job is opened.
const JobScreen = lazy(() => import('./shell/job-screen.tsx'));
const TypesScreen = lazy(() => import('./engine-type/types-screen.tsx'));
const TypeScreen = lazy(() => import('./engine-type/type-screen.tsx'));
const InstrumentsScreen = lazy(() => import('./instruments/instruments-screen.tsx'));
const InstrumentScreen = lazy(() => import('./instruments/instrument-screen.tsx'));
const ReckonerScreen = lazy(() => import('./reckoner/reckoner-screen.tsx'));
const SumScreen = lazy(() => import('./reckoner/sum-screen.tsx'));
const SlipsScreen = lazy(() => import('./instruments/slips-screen.tsx'));
const WorkshopScreen = lazy(() => import('./workshop/workshop-screen.tsx'));
const BookInScreen = lazy(() => import('./book-in/book-in-screen.tsx'));

const Fetching = () => (
  <Sheet heading="Opening">
    <p>Fetching what this sheet needs …</p>
  </Sheet>
);

export const App = () => (
  <SignOn>
    <Suspense fallback={<Fetching />}>
      <Switch>
        <Route path="/" component={JobsScreen} />
        <Route path="/book-in" component={BookInScreen} />
        <Route path="/engine-types" component={TypesScreen} />
        <Route path="/engine-types/:id/:sheet?">
          {({ id, sheet }) => <TypeScreen id={decodeURIComponent(id)} slug={sheet ?? 'versions'} />}
        </Route>
        <Route path="/workshop" component={WorkshopScreen} />
        <Route path="/instruments" component={InstrumentsScreen} />
        <Route path="/instruments/:name">
          {({ name }) => <InstrumentScreen name={decodeURIComponent(name)} />}
        </Route>
        <Route path="/reckoner" component={ReckonerScreen} />
        <Route path="/reckoner/:name">{({ name }) => <SumScreen name={decodeURIComponent(name)} />}</Route>
        <Route path="/slips" component={SlipsScreen} />
        <Route path="/jobs/:job/:phase?">
          {({ job, phase }) => <JobScreen jobId={decodeURIComponent(job)} phase={phase ?? ''} part="" />}
        </Route>
        <Route path="/jobs/:job/:phase/:part">
          {({ job, phase, part }) => <JobScreen jobId={decodeURIComponent(job)} phase={phase} part={part} />}
        </Route>
        <Route>
          <Sheet heading="Not here">
            <p>Nothing stands at this address. The jobs are on the first sheet.</p>
          </Sheet>
        </Route>
      </Switch>
    </Suspense>
  </SignOn>
);
