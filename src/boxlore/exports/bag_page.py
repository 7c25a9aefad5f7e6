"""The page of a bag, to be opened first: what it is, what each file is, how to check it with what a computer has."""

from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.crosswalk.extent import Extent
from boxlore.exports.escaping import clean

_CHECKS = (
    ("Linux, in a terminal opened in this folder", "sha512sum --quiet -c manifest-sha512.txt"),
    ("macOS, in Terminal opened in this folder", "shasum -a 512 -c manifest-sha512.txt"),
    (
        "Windows, in PowerShell opened in this folder",
        "Get-Content manifest-sha512.txt | % { $h, $f = $_ -split '  ', 2; "
        'if ((Get-FileHash $f -Algorithm SHA512).Hash -ne $h) { "CHANGED: $f" } }',
    ),
)
"""(system, command): how to check a bag with the tools that the system has already."""


@dataclass(frozen=True, slots=True, kw_only=True)
class BagPage:
    """What the page of one bag says beyond the facts. `contents` is (path, what the file is) of its own files; `which`
    says which bag of the transfer it is; `updates` are the bags that it updates, `withdraws` says whether anything of
    them is to be deleted, replaced or returned, `left_out` what is not in it. Of a part in several bags, `others` is
    (path, bags) of what lies in others, `receipt_in` the other bag that holds the receipt."""

    is_closed: bool
    contents: Sequence[tuple[str, str]]
    which: str
    updates: Sequence[str] = ()
    withdraws: bool = False
    left_out: Sequence[str] = ()
    others: Sequence[tuple[str, str]] = ()
    receipt_in: str = ""


def bag_page(facts: CollectionFacts, extent: Extent, bag: BagPage) -> bytes:
    """The page as HTML."""
    rows = "".join(
        f"<tr><td><code>{_text(path)}</code></td><td>{_text(words)}</td></tr>" for path, words in bag.contents
    )
    checks = "".join(f"<dt>{escape(system)}</dt><dd><pre>{escape(line)}</pre></dd>" for system, line in _CHECKS)
    whereabouts = "handed over with it" if facts.originals else f"kept by {facts.held_by}; these are scans only"
    return f"""<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>{_text(facts.title)}</title>
<style>body{{font:1rem/1.5 serif;max-width:46rem;margin:2rem auto;padding:0 1rem}}
td,dt{{vertical-align:top;padding-right:1rem}}pre{{white-space:pre-wrap}}</style></head><body>
<h1>{_text(facts.title)}</h1>
<p>{escape(extent.words)}; {escape(extent.years)}.
The originals are {_text(whereabouts)}{escape(extent.lent_words)}. Made on {facts.on_day}{_for_whom(facts)}.</p>
<p>{_text(bag.which)}</p>
{_CLOSED if bag.is_closed else _OPEN}
{_own_words(facts)}{_updated(bag.updates, withdraws=bag.withdraws)}<h2>What is here</h2><table>{rows}</table>
{_elsewhere(bag.others)}{_not_here(bag.left_out)}<h2>Is it whole?</h2>
<p>This folder is a bag (BagIt 1.0, RFC 8493). Every file below <code>data/</code> is listed with its SHA-512
in <code>manifest-sha512.txt</code>. To check it no program of ours is needed:</p>
<dl>{checks}</dl>
<p>Nothing said, or “OK” behind each file, means that every file is as it was packed.</p>
<h2>What to send back</h2>
<p>Please fill in <code>data/metadata/receipt.csv</code>{_held_by(bag.receipt_in)} (accession number, your own
reference for each item, remarks), and send it back; the family's copies and albums will carry your references
from then on, and it will hear what you remarked. {_RECEIPTS}{_to_whom(facts)}</p>
<p>Rights statements and forms in this package state what the family knows. They are no legal advice; put your own
statement in the place of “Copyright Not Evaluated”.</p>
</body></html>
""".encode()


_CLOSED = """<p><strong>This is the closed part.</strong> It names people taken as living. Each item says until when it
is closed, and why. It is not to be shown before that day.</p>"""
_OPEN = """<p>This is the open part: the names of people taken as living, and scans that show or name them, are
left out. They are in the closed part.</p>"""


_RECEIPTS = "Both parts have this table, that of the closed part with its recordings too; one of them is enough."


def _text(words: str) -> str:
    return escape(clean(words))


def _for_whom(facts: CollectionFacts) -> str:
    return f" for {_text(facts.archive.repository)}" if facts.archive.repository else ""


def _own_words(facts: CollectionFacts) -> str:
    """What the archive itself says of access and use, in its language."""
    archive = facts.archive
    said = [words for words in (archive.access, archive.use) if words]
    marked = f' lang="{escape(archive.language, quote=True)}"' if archive.language else ""
    return f"<p>The archive says: <q{marked}>{_text(' '.join(said))}</q></p>\n" if said else ""


def _to_whom(facts: CollectionFacts) -> str:
    return f" It comes from: {_text(facts.holder)}." if facts.holder else ""


_FIRST = """<strong>Please do first what
<code>data/metadata/withdraw.csv</code> asks:</strong> it names what is to be deleted, replaced or returned, and why;
a path with <code>../</code> is of the bag itself, beside its <code>data</code>."""
_NOTHING = "Nothing that you have is to be deleted or returned: <code>data/metadata/withdraw.csv</code> is empty."


def _updated(bags: Sequence[str], *, withdraws: bool) -> str:
    if not bags:
        return ""
    lines = "".join(f"<li>{_text(words)}</li>" for words in bags)
    return f"""<h2>This is an update</h2>
<p>It updates:</p><ul>{lines}</ul>
<p>The records and finding aids here are whole: put them in the place of the earlier ones. Files that you have already
are not sent again; <code>data/metadata/files.csv</code> lists them. Paths of scans in the finding aid and in METS
(<code>../scans/</code>) lead to a file once the <code>data</code> folder of this bag lies over that of the earlier
one. {_FIRST if withdraws else _NOTHING}</p>
"""


def _elsewhere(others: Sequence[tuple[str, str]]) -> str:
    if not others:
        return ""
    rows = "".join(f"<tr><td><code>{_text(path)}</code></td><td>{_text(bags)}</td></tr>" for path, bags in others)
    return f"""<h2>What the other bags of this part hold</h2><table>{rows}</table>
<p><code>data/metadata/bags.csv</code> says which bag holds which file. The bags of a part belong together: keep
them side by side, and every path of the finding aid and of METS leads into the bag that holds the file.</p>
"""


def _held_by(bag: str) -> str:
    return f", which is in {_text(bag)}" if bag else ""


def _not_here(left_out: Sequence[str]) -> str:
    if not left_out:
        return ""
    return f"<h2>What is not here</h2><ul>{''.join(f'<li>{_text(words)}</li>' for words in left_out)}</ul>\n"
