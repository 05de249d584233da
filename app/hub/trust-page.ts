/** What does a phone read that is to trust the hub's certificate? A page by plain http, and the certificate. */
import { Hono } from 'hono';
import { html } from 'hono/html';
import { secureHeaders } from 'hono/secure-headers';
import { hubWords, type HubLanguage } from './words.ts';

/** The page at `/` in the language that the browser asks for, and the authority at `/pairlog.crt`. */
export const trustPage = (authority: string, secureUrl: string): Hono => {
  const app = new Hono();
  app.use(secureHeaders({ contentSecurityPolicy: { defaultSrc: ["'none'"] } }));
  app.get('/pairlog.crt', (c) =>
    c.body(authority, 200, { 'content-type': 'application/x-x509-ca-cert' }),
  );
  app.get('*', (c) => {
    const language: HubLanguage = /^zh/i.test(c.req.header('accept-language') ?? '') ? 'zh' : 'en';
    const words = hubWords[language];
    return c.html(
      html`<!doctype html>
        <html lang="${language}">
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width" />
          <title>${words.title}</title>
          <h1>${words.title}</h1>
          <p>${words.why}</p>
          <ol>
            ${words.steps.map(
              (step, at) =>
                html`<li>${at === 0 ? html`<a href="/pairlog.crt">${step}</a>` : step}</li>`,
            )}
            <li><a href="${secureUrl}">${words.open}</a></li>
          </ol>
          <p>${words.care}</p>
        </html>`,
    );
  });
  return app;
};
