/**
 * How do phones on the local network reach the hub by https, without which no browser installs an app?
 * The hub makes an authority of its own once, and with it a certificate for the addresses that it has today.
 * Each phone is told once to trust the authority; its key stays in the hub's folder.
 */
import { X509Certificate } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { hostname, networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { generate, type CertificateExtension } from 'selfsigned';

export interface LanCertificate {
  readonly key: string;
  readonly cert: string;
  /** The authority's certificate, for the phones. */
  readonly authority: string;
  /** Addresses that the certificate is for, the likeliest first. */
  readonly addresses: readonly string[];
}

const DAY_MS = 86_400_000;
const AUTHORITY_DAYS = 3650;
/** Browsers of one maker refuse certificates of more than 825 days. */
const CERTIFICATE_DAYS = 397;

const readIfThere = (file: string): string | null => {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
};

/** IPv4 addresses by which others on the network reach this machine. */
export const lanAddresses = (): string[] =>
  Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);

const authorityOf = async (folder: string, nowMs: number) => {
  const [keyFile, certFile] = [join(folder, 'authority.key'), join(folder, 'authority.crt')];
  const [key, cert] = [readIfThere(keyFile), readIfThere(certFile)];
  if (key !== null && cert !== null && Date.parse(new X509Certificate(cert).validTo) > nowMs)
    return { key, cert };
  const made = await generate([{ name: 'commonName', value: `Pairlog on ${hostname()}` }], {
    keyType: 'ec',
    algorithm: 'sha256',
    notBeforeDate: new Date(nowMs - DAY_MS),
    notAfterDate: new Date(nowMs + AUTHORITY_DAYS * DAY_MS),
    extensions: [
      { name: 'basicConstraints', cA: true, pathLenConstraint: 0, critical: true },
      { name: 'keyUsage', keyCertSign: true, cRLSign: true, critical: true },
    ],
  });
  mkdirSync(folder, { recursive: true });
  writeFileSync(keyFile, made.private, { mode: 0o600 });
  writeFileSync(certFile, made.cert);
  return { key: made.private, cert: made.cert };
};

/**
 * A certificate for `addresses` and this machine's name, signed by the authority in `folder`, which is
 * made where there is none.
 */
export const lanCertificate = async (
  folder: string,
  addresses: readonly string[],
  nowMs: number,
): Promise<LanCertificate> => {
  const authority = await authorityOf(folder, nowMs);
  const names = [hostname(), `${hostname()}.local`, 'localhost'];
  const extensions: CertificateExtension[] = [
    { name: 'basicConstraints', cA: false, critical: true },
    { name: 'keyUsage', digitalSignature: true, critical: true },
    { name: 'extKeyUsage', serverAuth: true },
    {
      name: 'subjectAltName',
      altNames: [
        ...names.map((value) => ({ type: 2 as const, value })),
        ...[...addresses, '127.0.0.1'].map((ip) => ({ type: 7 as const, ip })),
      ],
    },
  ];
  const made = await generate([{ name: 'commonName', value: addresses[0] ?? 'localhost' }], {
    keyType: 'ec',
    algorithm: 'sha256',
    notBeforeDate: new Date(nowMs - DAY_MS),
    notAfterDate: new Date(nowMs + CERTIFICATE_DAYS * DAY_MS),
    extensions,
    ca: { key: authority.key, cert: authority.cert },
  });
  return { key: made.private, cert: made.cert, authority: authority.cert, addresses };
};
