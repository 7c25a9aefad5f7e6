"""The text of the guide that F1 shows, for someone who has never used a terminal.

The keys come from the tables of `tui.keys`.
"""

import textwrap

from boxlore.tui.keys import ITEM_KEYS, ROW_KEYS, Key
from boxlore.tui.widgets.plain_text import StyledText

CAP_WIDE, HELP_WIDE = 10, 58
"""Columns of what is printed on a key, and of what it does beside that: both fit into a window 80 columns wide."""
BESIDE = "\n" + " " * (CAP_WIDE + 3)

Sections = tuple[tuple[str, tuple[str, ...]], ...]
"""(heading, paragraphs) of each section."""

FIRST: Sections = (
    (
        "How this works",
        (
            "One photograph is out at a time. Sit beside the person who knows. Look at the scan together, "
            "let them talk, and type what they say, in their own words.",
            "You cannot break anything. Every key you press is kept on the disk at once; the line at the top says "
            "“saved”. If the power fails, nothing is lost. Ctrl+Z takes back the last thing done "
            "(hold the key marked Ctrl, press Z, let go).",
            "The mouse is not needed. Keys marked F1 to F10 are in the top row of the keyboard; on some laptops, hold "
            "the key marked Fn as well. Each of them is also in the menu: press Esc.",
        ),
    ),
    (
        "Your first three photographs",
        (
            "1. The cursor stands under “Tell me about this photograph.” Type what you are told.",
            "2. Press Tab to go to the next question, Shift+Tab to go back.",
            "3. At “Who is in it?” type one name and press Enter; then the next name.",
            "4. If a name appears after the word Tab, pressing Tab takes it, so you need not type it out.",
            "5. Nobody knows? Press F5: it is noted that you asked.",
            "6. Press PgDn (Page Down) for the next photograph. Stop whenever you like with Ctrl+Q.",
        ),
    ),
)

AFTER: Sections = (
    (
        "Good to know",
        (
            "A date may be told in any words: “about 1938”, “summer of 52”, “before the war”. What is understood "
            "stands below; your words are kept as they are. If it asks “which century?”, type a little more.",
            "Do not correct the teller. If two people disagree, both are kept, with their names. "
            "F4 shows who says what.",
            "Do not suggest names. “Who is this?” is a better question than “Is this Aunt Ida?”",
            "Something private? F6 at that question: family only, or nobody but the keeper. If they wish it had not "
            "been said at all: F4, then “Strike for good”: out of the backups too.",
            "Several prints on one scan? Press Esc, “Take in”, “Prints on a sheet”: their outlines are drawn over the "
            "picture, here and on the teller’s page. Drag the corners, or take one with Tab and move it with the "
            "arrows, finer with Shift; a adds an outline, Del takes it away, Enter makes a photograph of each.",
            "Something went badly wrong? Each time you leave, a backup is made. Press Esc, “Keep safe”, “Bring "
            "back a backup”, and the collection is as it was then. What is there now is kept too, and can come back "
            "itself.",
            "What stands under “What to ask” is only a question. You need not answer it. Where Ctrl+P stands behind "
            "it, that key answers it.",
            "Stop after about an hour and a half, sooner if the teller is tired.",
        ),
    ),
    (
        "The teller’s own page",
        (
            "The teller looks at the photograph in a browser: on this machine beside this window, or on a tablet in "
            "the same network. Press Esc, “Sit”, “Page for the teller”: it asks which, and shows the address, and a "
            "square that a tablet’s camera reads. The page follows what you have out.",
            "A touch on a face puts a numbered marker there; the next name you type under “Who is in it?” is that "
            "person’s. You can set one too: F2, the arrow keys, Enter; or click on the picture. In F2, + and - look "
            "closer and a digit goes to that marker and takes it in hand: Enter alone names it, arrows and Enter "
            "move it, Del takes it away. h proposes a number on each face that has none (with the extra "
            "“see”; where a face is, never whose), Enter takes them, and the names are asked for one by one. r turns "
            "the picture to the right, a notes that it was coloured or "
            "retouched; both go with all that is made of it, and no file is changed. A marker without a name is "
            "asked for each time; F5 notes that nobody knows.",
            "A photograph with a care note about what it shows stays covered until the note was read: F2 here, or a "
            "button on the page.",
        ),
    ),
    (
        "Agreement, rest, recording, closing",
        (
            "Press Esc, “Sit”, “This sitting”. “Agreement” has a text to read out before the first question, and "
            "notes what was agreed and who gave it. “Rest” and “End the sitting” are there, and what to ask next time.",
            "If a recorder runs: choose “Clap” and clap your hands once. Afterwards give the sound file and where in "
            "it the clap is heard; then everything told can be found in the recording. F4 shows where.",
            "Something not meant for outside? “Keep the last minutes from outside”: nothing of them leaves the family, "
            "and neither does a recording in which they are heard.",
            "What was agreed holds for all that this teller says in the sitting, said before or after: what is for the "
            "family only goes into no output for anyone and to no archive; what an archive keeps closed goes into the "
            "closed part of a transfer alone. Agreeing anew changes it.",
        ),
    ),
    (
        "Saying one thing of many",
        (
            "F8 takes people, day, place or occasion over from the photograph before. In the list (F3), Space picks "
            "rows out, Shift with an arrow one after the other, Ctrl+R all up to the cursor; F8 there says one thing "
            "of all of them, or moves them into another box. Ctrl+Z takes it back.",
            "The questions themselves are a file you may edit and translate: Esc, “Sit”, “The questions asked”.",
        ),
    ),
    (
        "Who tells, and putting right",
        (
            "The line at the top says who tells. “No teller yet”? Esc, “Sit”, “Who tells now”: what was told before "
            "can be given to her all at once.",
            "Esc, “Put right” has everything told of a person, a place or an occasion, to be called something else "
            "everywhere; “Places” says where on the map each is, for all its photographs at once. “Check” lists what "
            "is most worth doing; Enter goes to the photograph at its question.",
            "“Sit”, “What to ask” has your notes for next time, faces without a name, and what only she can date, "
            "worked out from all that is told. “Put right”, “What can be worked out” shows which dates follow from "
            "it, and why.",
            "Ctrl+N shows the next photograph of which who, when, where or the occasion is not told.",
        ),
    ),
    (
        "For a screen reader",
        ("Start with: boxlore sit --plain. The same sitting, line by line; .help lists what can be said.",),
    ),
    (
        "Words used here",
        (
            "Number: written on the enclosure, for ever; TRA-0042. Mark: Box 1 / Folder 2 / Item 4, short 1/2/4; "
            "it changes when things are moved.",
            "Bare: nothing told yet. Begun: something told. Told: who, when, where, and a story or an occasion.",
        ),
    ),
)


def parts(here: tuple[tuple[str, str], ...] = ()) -> list[StyledText]:
    """The whole guide, as parts of styled text; what the keys do on the screen from which it was asked for stands
    first, where `here` has them."""
    written = _keys("Keys here", here) if here else []
    for heading, paragraphs in FIRST:
        written += _section(heading, paragraphs)
    written += _keys("Keys, with a photograph out", _lines(ITEM_KEYS))
    written += _keys("Keys, in the list", _lines(ROW_KEYS))
    for heading, paragraphs in AFTER:
        written += _section(heading, paragraphs)
    return written


def _section(heading: str, paragraphs: tuple[str, ...]) -> list[StyledText]:
    return [(f"{heading}\n\n", "bold $primary"), *(f"{paragraph}\n\n" for paragraph in paragraphs)]


def _lines(keys: tuple[Key, ...]) -> tuple[tuple[str, str], ...]:
    return tuple((key.cap, key.help) for key in keys)


def _keys(heading: str, keys: tuple[tuple[str, str], ...]) -> list[StyledText]:
    written: list[StyledText] = [(f"{heading}\n\n", "bold $primary")]
    for cap, words in keys:
        written += [(f"  {cap:<{CAP_WIDE}}", "bold"), f" {BESIDE.join(textwrap.wrap(words, HELP_WIDE))}\n"]
    return [*written, "\n"]
