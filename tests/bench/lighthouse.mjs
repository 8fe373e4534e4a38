// What Lighthouse finds of the release page as a phone has it: prints JSON.

import lighthouse from 'lighthouse';

import { launch, pageUrl } from '../e2e/chromium.mjs';

const port = Number(process.env.FAREND_DEBUG_PORT);
const browser = await launch([`--remote-debugging-port=${port}`]);
try {
  const { lhr } = await lighthouse(pageUrl, { port, output: 'json', logLevel: 'error' });
  const scores = Object.values(lhr.categories).map(({ id, score }) => [id, Math.round(score * 100)]);
  const missed = Object.values(lhr.audits)
    .filter(({ score, scoreDisplayMode }) => score !== null && score < 0.9 && scoreDisplayMode !== 'informative')
    .map(({ title, displayValue = '' }) => [title, displayValue]);
  console.log(JSON.stringify({ scores, missed }));
} finally {
  await browser.close();
}
