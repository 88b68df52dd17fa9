import { spawnSync } from 'node:child_process';
import path from 'node:path';

export type CertificateFiles = { cert: string; key: string };

/** A throw-away certificate for this machine, or for `host`, good for a day, made by `openssl`. */
export function makeCertificate(
  folder: string,
  name = 'own',
  host = 'IP:127.0.0.1',
): CertificateFiles {
  const cert = path.join(folder, `${name}.crt`);
  const key = path.join(folder, `${name}.key`);
  const made = spawnSync(
    'openssl',
    `req -x509 -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -days 1 -subj /CN=127.0.0.1 -addext subjectAltName=${host}`
      .split(' ')
      .concat('-keyout', key, '-out', cert),
    { encoding: 'utf8' },
  );
  if (made.status !== 0) throw new Error(`openssl made no certificate: ${made.stderr}`);
  return { cert, key };
}
