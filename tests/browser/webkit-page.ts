/**
 * A page in a WebKit engine (WebKitGTK's small browser, driven by WebDriver), found and used the way a
 * person does: by the words of labels, links and buttons. An engine check; it is not Safari on iOS.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import {
  Builder,
  By,
  Capabilities,
  error,
  until,
  type WebDriver,
  type WebElement,
} from 'selenium-webdriver';

const WAIT_MS = 15_000;
/** Tests that run beside each other draw on screens of their own. */
const DISPLAY = `:${77 + Number(process.env['TEST_PARALLEL_INDEX'] ?? 0)}`;

const miniBrowser = (): string => {
  const folders = ['/usr/libexec', ...readdirSync('/usr/lib').map((name) => `/usr/lib/${name}`)];
  const found = folders
    .map((folder) => `${folder}/webkit2gtk-4.1/MiniBrowser`)
    .find((path) => existsSync(path));
  if (found === undefined) throw new Error('WebKitWebDriver is here, but its MiniBrowser is not');
  return found;
};

/** The screen that the browsers draw on; one for all of them. */
export const startScreen = (): ChildProcess =>
  spawn('Xvfb', [DISPLAY, '-screen', '0', '1280x1024x24', '-nolisten', 'tcp'], { stdio: 'ignore' });

const isUp = async (port: number): Promise<boolean> => {
  try {
    return (await fetch(`http://127.0.0.1:${port}/status`)).ok;
  } catch {
    return false;
  }
};

/** Text inside an XPath: it has no escapes, so a text with both kinds of quotes is put together. */
const quoted = (text: string): string =>
  text.includes("'") ? `concat('${text.split("'").join(`', "'", '`)}')` : `'${text}'`;

const named = (text: string) =>
  `(normalize-space(.)=${quoted(text)} or @aria-label=${quoted(text)})`;

export class WebKitPage {
  readonly #driver: WebDriver;
  readonly #process: ChildProcess;

  private constructor(driver: WebDriver, process: ChildProcess) {
    this.#driver = driver;
    this.#process = process;
  }

  /** A browser of its own, with storage of its own that goes with it. */
  static async open(webDriver: string, port: number): Promise<WebKitPage> {
    const child = spawn(webDriver, [`--port=${port}`], {
      env: { ...process.env, DISPLAY, LIBGL_ALWAYS_SOFTWARE: '1', NO_AT_BRIDGE: '1' },
      stdio: 'ignore',
    });
    for (let tries = 0; !(await isUp(port)); tries++) {
      if (tries > 100) throw new Error('WebKitWebDriver does not answer');
      await new Promise((done) => setTimeout(done, 100));
    }
    const driver = await new Builder()
      .usingServer(`http://127.0.0.1:${port}`)
      .withCapabilities(
        new Capabilities({
          browserName: 'MiniBrowser',
          'webkitgtk:browserOptions': { binary: miniBrowser(), args: ['--automation'] },
        }),
      )
      .build();
    return new WebKitPage(driver, child);
  }

  async close(): Promise<void> {
    await this.#driver.quit().catch(() => undefined);
    this.#process.kill();
  }

  goto(url: string): Promise<void> {
    return this.#driver.get(url);
  }

  run<T>(script: string): Promise<T> {
    return this.#driver.executeScript(script);
  }

  /** Waits until a condition in the page is true; meanwhile it may be another page. */
  async comesTrue(condition: string): Promise<void> {
    const isTrue = () => this.run<boolean>(`return (${condition}) === true`).catch(() => false);
    await this.#driver.wait(isTrue, WAIT_MS, `it does not come true: ${condition}`);
  }

  /** Waits until the page shows this text. */
  async shows(text: string): Promise<void> {
    const at = By.xpath(`//body//*[contains(normalize-space(.), ${quoted(text)})]`);
    try {
      await this.#driver.wait(until.elementLocated(at), WAIT_MS);
    } catch (error) {
      // What it shows instead tells a late answer from a wrong one.
      const shown = await this.run<string>('return document.body.innerText');
      throw new Error(`the page does not show: ${text}\nIt shows:\n${shown}`, { cause: error });
    }
  }

  /** Text of the first element that a CSS selector finds. */
  async textOf(selector: string): Promise<string> {
    return (await this.#find(By.css(selector), selector)).getText();
  }

  link(text: string): Promise<void> {
    return this.#click(`//a[${named(text)}]`);
  }

  button(text: string): Promise<void> {
    return this.#click(`//button[${named(text)}]`);
  }

  /** A radio button or check box, by its caption; stays as it is where it is on. */
  async choose(caption: string): Promise<void> {
    const label = `//label[normalize-space(.)=${quoted(caption)}]`;
    const input = await this.#find(By.xpath(`${label}//input`), caption);
    if (!(await input.isSelected())) await this.#click(`${label}/span`);
  }

  async fill(label: string, text: string): Promise<void> {
    const field = await this.#field(label);
    await this.run(`document.activeElement?.blur()`);
    await field.clear();
    await field.sendKeys(text);
  }

  async select(label: string, option: string): Promise<void> {
    const field = await this.#field(label);
    // The list of a select opens as a window of the system, which no driver reaches.
    await this.#driver.executeScript(
      `const [select, text] = arguments;
       select.value = [...select.options].find((one) => one.label === text).value;
       select.dispatchEvent(new Event('change', { bubbles: true }));`,
      field,
      option,
    );
  }

  /** Presses keys on the element that has this role and name. */
  async keys(role: string, name: string, ...keys: readonly string[]): Promise<void> {
    const at = `//*[@role=${quoted(role)}][@aria-label=${quoted(name)} or @aria-labelledby=//*[normalize-space(.)=${quoted(name)}]/@id]`;
    await (await this.#find(By.xpath(at), name)).sendKeys(...keys);
  }

  async #field(label: string): Promise<WebElement> {
    const found = await this.#find(By.xpath(`//label[normalize-space(.)=${quoted(label)}]`), label);
    return this.#find(By.id((await found.getAttribute('for')) ?? ''), label);
  }

  async #find(at: By, what: string): Promise<WebElement> {
    return this.#driver.wait(until.elementLocated(at), WAIT_MS, `not on the page: ${what}`);
  }

  async #click(path: string): Promise<void> {
    const element = await this.#find(By.xpath(path), path);
    await this.#driver.executeScript(`arguments[0].scrollIntoView({ block: 'center' })`, element);
    await this.#driver.wait(until.elementIsVisible(element), WAIT_MS);
    // A list that is still measuring its rows moves them: a person would tap again.
    const clicked = () =>
      element.click().then(
        () => true,
        (failed: unknown) => {
          if (failed instanceof error.ElementNotInteractableError) return false;
          throw failed;
        },
      );
    await this.#driver.wait(clicked, WAIT_MS, `cannot be tapped: ${path}`);
  }
}
