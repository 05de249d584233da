/** How to put the app on the home screen, step by step, with a picture of each thing to tap. */
import type { ComponentChildren } from 'preact';
import { Page } from '../../parts/controls/controls.tsx';
import { ownWords, t } from '../../words/index.ts';
import './own.css';

const Icon = ({ children }: { readonly children: ComponentChildren }) => (
  <svg viewBox="0 0 24 24" aria-hidden="true">
    {children}
  </svg>
);

const share = (
  <Icon>
    <path d="M8 10H5v11h14V10h-3M12 15V3M8 6.5L12 3l4 3.5" />
  </Icon>
);
const add = (
  <Icon>
    <path d="M4 4h16v16H4zM12 8v8M8 12h8" />
  </Icon>
);
const dots = (
  <Icon>
    <path d="M12 5v.01M12 12v.01M12 19v.01" stroke-width="3.5" />
  </Icon>
);
const onScreen = (
  <Icon>
    <path d="M7 2.5h10v19H7zM10 6h4v4h-4z" />
  </Icon>
);

const Steps = (props: {
  readonly title: string;
  readonly steps: readonly string[];
  readonly icons: readonly ComponentChildren[];
}) => (
  <section class="sheet">
    <h2>{props.title}</h2>
    <ol class="install-steps">
      {props.steps.map((step, at) => (
        <li key={step}>
          {step} {props.icons[at]}
        </li>
      ))}
    </ol>
  </section>
);

/** iPadOS calls itself a Mac; a Mac has no touch points. */
const isApple = (): boolean =>
  /iPhone|iPad|iPod/.test(navigator.userAgent) ||
  (/Macintosh/.test(navigator.userAgent) && navigator.maxTouchPoints > 1);

export const InstallPage = () => {
  const words = ownWords().install;
  const both = [
    <Steps key="ios" title={words.ios} steps={words.iosSteps} icons={[share, add, onScreen]} />,
    <Steps
      key="other"
      title={words.other}
      steps={words.otherSteps}
      icons={[dots, add, onScreen]}
    />,
  ];
  return (
    <Page title={words.page} back={{ href: '/', label: t().back }}>
      <p>{words.why}</p>
      {isApple() ? both : both.reverse()}
      <p class="soft">{words.iosNote}</p>
      <p class="soft">{words.first}</p>
    </Page>
  );
};
