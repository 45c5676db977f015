### Drawings. Words on paper are short; the description says the rest.

drawing-edition = NFPA 70, { $edition } edition
drawing-edition-unverified = NFPA 70, { $edition } edition, not verified
drawing-no-verdict = Sizing question, no verdict
drawing-caution = A drawing of arithmetic, not of an installation: it approves nothing.
drawing-left = { $figure } left
drawing-short = { $figure } short

## Outlet boxes

drawing-outlet-title = Volume of an outlet box
drawing-outlet-available = Available { $figure }
drawing-outlet-required = Required { $figure }
drawing-space = Space { $space }
