/** @module A page that stands alone: no script, nothing fetched, its style inside it. */
import { escaped } from './html.ts';

/** @param main  what it holds, as HTML that ends its own last line */
export const standAlonePage = (title: string, style: string, main: string): string => `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<link rel="icon" href="data:,">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>${style}</style>
</head>
<body>
<main>
${main}</main>
</body>
</html>
`;
