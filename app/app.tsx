/** Which screen stands at which address? The phone's everyday screens come at once, the rest when opened. */
import { ErrorBoundary, lazy, LocationProvider, Route, Router } from 'preact-iso';
import { LinkButton, Page } from './parts/controls/controls.tsx';
import { showFailedRead } from './parts/fault.ts';
import { Toast } from './parts/controls/toast.tsx';
import { session } from './parts/state.ts';
import { need, t } from './words/index.ts';
import { Today } from './phone/today.tsx';

/** A screen of its own file that also reads the glossary, what is said of an entry, and of pain and damage. */
const withTerms = <T,>(screen: Promise<T>): Promise<T> =>
  Promise.all([screen, need('glossary', 'entry', 'care')]).then(([loaded]) => loaded);

const LogScreen = lazy(
  async () => (await withTerms(import('./phone/log/log-screen.tsx'))).LogScreen,
);
/** A bookmark of a log screen, or a reload on it: its files come beside the first ones, not after them. */
export const fetchScreenAhead = (path: string): void => {
  if (path.startsWith('/log/')) void LogScreen.preload();
};

/** A tester's own pages: a run, a pair, and how to keep the app. */
const withOwn = <T,>(screen: Promise<T>): Promise<T> =>
  Promise.all([screen, need('own')]).then(([loaded]) => loaded);

const OwnRunPage = lazy(async () => {
  await need('glossary', 'entry', 'desk', 'places', 'talk');
  return (await withOwn(import('./phone/own/run-page.tsx'))).OwnRunPage;
});
const OwnPairPage = lazy(async () => {
  await need('glossary', 'talk');
  return (await withOwn(import('./phone/own/pair-page.tsx'))).OwnPairPage;
});
const InstallPage = lazy(
  async () => (await withOwn(import('./phone/own/install-page.tsx'))).InstallPage,
);
/** What a tester hears of their own reports, and of a test that is over. */
const ThanksPage = lazy(async () => {
  await need('glossary', 'desk', 'talk');
  return (await withOwn(import('./phone/heard/thanks-page.tsx'))).ThanksPage;
});
const TestPage = lazy(async () => {
  await need('glossary', 'talk');
  return (await withOwn(import('./phone/heard/test-page.tsx'))).TestPage;
});
const LastPair = lazy(async () => (await withOwn(import('./phone/own/last-pair.tsx'))).LastPair);

const Welcome = lazy(async () => (await import('./phone/welcome.tsx')).Welcome);
const Runs = lazy(async () => (await withOwn(import('./phone/runs.tsx'))).Runs);
const PairByCode = lazy(async () => {
  await need('join');
  return (await import('./phone/pair-by-code.tsx')).PairByCode;
});
const RunHistory = lazy(async () => (await import('./phone/run-history.tsx')).RunHistory);
const UnsentScreen = lazy(async () => (await import('./phone/unsent.tsx')).UnsentScreen);
const SettingsScreen = lazy(async () => {
  await need('notices');
  return (await import('./phone/settings-screen.tsx')).SettingsScreen;
});
const Damage = lazy(async () => (await withTerms(import('./phone/damage.tsx'))).Damage);
const RankScreen = lazy(async () => (await import('./phone/rank-screen.tsx')).RankScreen);
const FitScreen = lazy(async () => {
  await need('fit', 'desk', 'talk', 'propose');
  return (await withTerms(import('./phone/fit/fit-screen.tsx'))).FitScreen;
});
const OpenFile = lazy(async () => {
  await need('file', 'entry', 'own');
  return (await import('./phone/open-file.tsx')).OpenFile;
});
const Desk = lazy(async () => {
  await need('glossary', 'entry', 'desk', 'places', 'talk', 'propose');
  return (await import('./desk/desk.tsx')).Desk;
});

const Reader = lazy(async () => {
  await need('glossary', 'desk', 'talk', 'propose');
  return (await import('./reader/reader.tsx')).Reader;
});
const ReaderFinding = lazy(async () => {
  await need('glossary', 'desk', 'talk', 'propose');
  return (await import('./reader/finding-screen.tsx')).FindingScreen;
});
const ReportScreen = lazy(async () => {
  await need('glossary', 'desk');
  return (await import('./reader/report-screen.tsx')).ReportScreen;
});

/** Whoever belongs to nobody yet is welcomed, whatever the address. */
const Home = () => (session.value ? <Today /> : <Welcome />);
const PairOfSlip = (props: { readonly code?: string }) =>
  session.value ? <PairByCode {...props} /> : <Welcome />;

const NotFound = () => (
  <Page title={t().notFound}>
    <LinkButton href="/">{t().toToday}</LinkButton>
  </Page>
);

/** A specialist reads findings and reports; there is nothing else to show, whatever the address. */
const ForSpecialists = () => (
  <Router>
    <Route path="/report/:id" component={ReportScreen} />
    <Route path="/finding/:id" component={ReaderFinding} />
    <Route path="/settings" component={SettingsScreen} />
    <Route path="/file" component={OpenFile} />
    <Route path="/shared" component={OpenFile} />
    <Route default component={Reader} />
  </Router>
);

const ForTheOthers = () => (
  <Router>
    <Route path="/" component={Home} />
    <Route path="/join" component={Welcome} />
    <Route path="/log" component={LastPair} />
    <Route path="/log/:pair" component={LogScreen} />
    <Route path="/run/:run" component={OwnRunPage} />
    <Route path="/pairs/:pair" component={OwnPairPage} />
    <Route path="/thanks/:id" component={ThanksPage} />
    <Route path="/test/:project" component={TestPage} />
    <Route path="/install" component={InstallPage} />
    <Route path="/pair/:code" component={PairOfSlip} />
    <Route path="/runs" component={Runs} />
    <Route path="/runs/:run" component={LogScreen} />
    <Route path="/runs/:run/history" component={RunHistory} />
    <Route path="/unsent" component={UnsentScreen} />
    <Route path="/settings" component={SettingsScreen} />
    <Route path="/damage/:pair/:report?" component={Damage} />
    <Route path="/rank/:project" component={RankScreen} />
    <Route path="/fit/:session" component={FitScreen} />
    <Route path="/file" component={OpenFile} />
    <Route path="/shared" component={OpenFile} />
    <Route path="/desk/*" component={Desk} />
    <Route path="/desk" component={Desk} />
    <Route default component={NotFound} />
  </Router>
);

export const App = () => (
  <LocationProvider>
    <ErrorBoundary onError={showFailedRead}>
      {session.value?.role === 'specialist' ? <ForSpecialists /> : <ForTheOthers />}
    </ErrorBoundary>
    <Toast />
  </LocationProvider>
);
