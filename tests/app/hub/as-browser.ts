/** What a browser adds to what a page asks of its hub, for tests without a browser. */

/** What it says of a question that a page of the hub itself asks: who joins or comes back must say it. */
export const OWN_PAGE = {
  'sec-fetch-site': 'same-origin',
  'content-type': 'application/json',
} as const;

/** What the store asks, with what a browser adds to it. */
export const asBrowser =
  (network: typeof fetch): typeof fetch =>
  (input: RequestInfo | URL, init?: RequestInit) => {
    const headers = new Headers(init?.headers);
    headers.set('sec-fetch-site', OWN_PAGE['sec-fetch-site']);
    return network(input, { ...init, headers });
  };
