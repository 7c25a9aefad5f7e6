"""Hand on: captioned copies, the family's pages, and what an archive is shown, handed and sends back."""

from collections import Counter
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import is_blank
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.collection.settings import keep_setting
from boxlore.tui.menu_tasks.task import (
    FOR,
    YES_NO,
    FormAnswers,
    Group,
    Task,
    audience_of,
    counted,
    file_blank,
    folder_blank,
    given_file,
    names_first,
    path_of,
    selection_of,
    to_anyone,
    which,
)
from boxlore.tui.screens.forms import CHOOSE, Blank


def _copies(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.copies import copies

    out = path_of(collection, answers["out"], "copies")
    results = list(
        copies(
            collection,
            out,
            to=audience_of(answers),
            selection=selection_of(answers),
            longest=int(answers["longest"]),
            progress=progress,
        )
    )
    lines = [f"In {out}: {counted(Counter(str(result.state) for result in results))}."]
    refused = (f"{result.number}: {result.why}" for result in results if result.state == "refused")
    return lines + list(dict.fromkeys(refused))  # of a front and its back it is said once


def _pages(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.printed_sheets import PrintOrder
    from boxlore.tasks.outputs.web_pages import NO_VOICES, pages
    from boxlore.tasks.sitting.voices import heard

    order = PrintOrder(to=audience_of(answers), selection=selection_of(answers), kin_of=answers["kin_of"])
    voices = heard(collection, order.to) if answers["voice"] == "yes" else NO_VOICES
    out = path_of(collection, answers["out"], "pages")
    written = pages(collection, out, order, voices=voices, progress=progress)
    lines = [
        f"{written.path / 'index.html'}: {several(written.items, 'photograph')}; {written.why_left_out}.",
        "Open index.html in any browser; the folder can be copied to a stick.",
    ]
    if not order.to.is_public:
        lines.append("They hold what only the family may see: do not put them on the web.")
    return [*lines, *[finding.message for finding in written.findings]]


def _offer(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.archive.offer import offer

    out = path_of(collection, answers["out"], "offer")
    offered = offer(collection, out, selection=selection_of(answers), progress=progress)
    return [
        f"{out}: {several(offered.items, 'photograph')}, {several(offered.pictures, 'thumbnail')}.",
        f"{several(offered.hidden, 'is', 'are')} not shown: closed, or for the sake of the living.",
        *[finding.message for finding in offered.findings],
        "Send the folder. The archive writes yes or no into offer.csv, and what it is called into archive.toml.",
    ]


def _answer(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.archive.offer import read_answer

    reply = read_answer(collection, given_file(collection, answers["file"]))
    return [
        f"{several(reply.wanted, 'is', 'are')} wanted, {several(reply.not_wanted, 'is', 'are')} not.",
        *_said_besides(reply.remarks, reply.note),
        *reply.refused,
    ]


def _said_besides(remarks: int, note: str) -> list[str]:
    """What else there is to say of a table that an archive sent back."""
    noted = [f"{several(remarks, 'remark')} of the archive noted: “Put right”, “Check” lists each."] if remarks else []
    return [*noted, *([note] if note else [])]


def _of_the_family(collection: Collection) -> list[Blank]:
    """The line for the family's history, which the finding aid has (DACS 2.7): until it is told once."""
    if not is_blank(collection.settings.history) or not collection.store.writable:
        return []
    hint = "Where it lived, by what; the archive's description has it. May stay empty."
    return [Blank("history", "The family in a few sentences", "", hint)]


_AS_BEFORE = "before"


def _originals(answer: str, earlier: Path | None) -> bool:
    """Whether the originals are handed over: as it is said, or as with the transfer that is updated. Raises WrongUse
    where it is not said, for a deed gives them away."""
    from boxlore.tasks.archive.transfer_updates import originals_before

    if answer == _AS_BEFORE and earlier is not None:
        return originals_before(earlier)
    if answer not in ("yes", "no"):
        what_to_do = "Name the earlier transfer, or choose yes or no." if answer else "Choose it with ← or →."
        raise WrongUse("It is not said whether the originals are handed over.", what_to_do)
    return answer == "yes"


def _transfer(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from dataclasses import replace

    from boxlore.tasks.archive.archive_settings import archive_of
    from boxlore.tasks.archive.names_asked import names_asked, said_of_answers, write_names_found
    from boxlore.tasks.archive.transfer import TransferOrder, in_words, transfer

    out = path_of(collection, answers["out"], "transfer")
    if not is_blank(history := answers.get("history", "")):
        collection.settings = keep_setting(collection.folder, "history", history.strip())
    archive = given_file(collection, answers["archive"]) if answers["archive"] else None
    earlier = path_of(collection, answers["earlier"], "") if answers["earlier"] else None
    selection = replace(selection_of(answers), wanted=answers["wanted"] == "yes")
    order = TransferOrder(
        selection=selection,
        archive=archive_of(collection.folder, archive, earlier),
        originals=_originals(answers["originals"], earlier),
        split=int(answers["split"]),
        earlier=earlier,
    )
    asked = names_asked(collection, selection)
    hits, lines = asked.namings, said_of_answers(asked)
    listed = write_names_found(collection, asked, selection)
    if hits:
        if answers["read"] != "yes":
            raise WrongUse(
                f"The name search found {in_words(hits)}; each is a row of {listed}, with what is done about it.",
                "Read that list (it is for you alone). Answer one by one under “Hand on”, “Names in question”, or "
                "write hide, not that person or may be named into its column Answer; then come back and say that you "
                "have. What has no answer stays hidden.",
            )
        lines.append(f"Where living people are named: {listed}. That list is for you alone.")
    transferred = transfer(collection, out, order=order, progress=progress)
    lines += [
        f"{part.path}: {several(part.records, 'record')}, {several(part.scans, 'scan')}, "
        f"{part.bytes / 1_000_000:,.1f} MB."
        for part in transferred.parts
    ]
    if transferred.withheld:
        lines.append(
            f"Names of {several(transferred.withheld, 'person', 'people')} taken as living are only in the closed part."
        )
    return [*lines, *[finding.message for finding in transferred.findings]]


def _receipt(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.archive.receipt import read_receipt

    received = read_receipt(collection, given_file(collection, answers["file"]), archive=answers["name"])
    accession = f"Accession {', '.join(received.accessions)}. " if received.accessions else ""
    taken_in = f"{several(received.references, 'reference')} of the archive taken in; outputs carry them from now on."
    besides = [*_said_besides(received.remarks, received.note), *received.said_of_references]
    return [accession + taken_in, *besides, *received.refused]


def _answer_archive(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.core.records.item_record import ANSWER
    from boxlore.tasks.collection.items_by_mark import WHOLE, find_told
    from boxlore.tasks.telling.statements import Teller, Telling

    about = answers["item"].strip()
    if is_blank(answers["text"]):
        raise WrongUse("No answer is written.", "Write what the archive is to read.")
    Teller(collection).tell(find_told(collection, about or WHOLE, ANSWER), ANSWER, answers["text"].strip(), Telling())
    return [f"Kept, {f'of {about}' if about else 'of the whole'}: it goes with the next update, in its closed part."]


def _proved(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.copies_proved import is_copies_folder, prove_copies
    from boxlore.tasks.scans.package_check import verify_package

    folder = path_of(collection, answers["folder"], "copies")
    if not folder.is_dir():
        raise WrongUse(f"There is no folder {folder}.", "Tab completes a path, F3 looks through the folders.")
    if not is_copies_folder(folder):
        return [finding.message for finding in verify_package(folder)] or ["Every file is as its manifests say."]
    wrong: list[str] = []
    count = 0
    for proved in prove_copies(collection, folder, progress):
        count += 1
        wrong += [f"{proved.line.number}: {finding.message}" for finding in proved.findings]
    return [f"{several(count, 'copy', 'copies')} read.", *(wrong or ["All are as they should be."])]


TASKS = {
    "copies": Task(
        Group.HAND_ON,
        "Captioned copies",
        "the caption goes into the copy",
        lambda collection: [
            folder_blank(collection, "out", "Into which folder?", "copies"),
            FOR,
            *which(),
            Blank("longest", "How large?", "0",
                  choices=(("0", "as scanned"), ("2048", "2048 pixels, for the web"), ("1024", "1024 pixels"))),
        ],
        names_first(_copies),
    ),
    "pages": Task(
        Group.HAND_ON,
        "Pages for a browser",
        "a folder to open or put on a stick",
        lambda collection: [
            folder_blank(collection, "out", "Into which folder?", "pages"),
            to_anyone(),
            *which(),
            Blank("kin_of", "Kinship told from whose side?", "", "A name: then people are named as kin of this one."),
            Blank("voice", "With recorded voices?", "no", "For the family, of whoever agreed.", choices=YES_NO),
        ],
        names_first(_pages),
    ),
    "offer": Task(
        Group.HAND_ON,
        "Offer to an archive",
        "the list that it sees first",
        lambda collection: [folder_blank(collection, "out", "Into which folder?", "offer"), *which()],
        names_first(_offer),
    ),
    "answer": Task(
        Group.HAND_ON,
        "The archive’s answer",
        "yes and no, from the offer sent back",
        lambda collection: [file_blank(collection, "file", "The offer.csv that came back")],
        _answer,
        writes=True,
    ),
    "transfer": Task(
        Group.HAND_ON,
        "Transfer to an archive",
        "records and scans, open and closed",
        lambda collection: [
            folder_blank(collection, "out", "Into which folder?", "transfer", "New or empty."),
            Blank("originals", "Are the originals (the prints) handed over too?",
                  choices=(CHOOSE, ("no", "no, scans only"), ("yes", "yes"), (_AS_BEFORE, "as in the earlier one"))),
            *which(),
            Blank("wanted", "Only what the archive wants?", "no", "As its answer to the offer says.", choices=YES_NO),
            file_blank(collection, "archive", "The archive’s own settings", "", "archive.toml. May stay empty."),
            folder_blank(collection, "earlier", "An earlier transfer to update", "", "New files go, on its terms."),
            Blank("split", "How large may one part be?", "0",
                  choices=(("0", "any size"), ("4000000000", "4 GB, for a stick"), ("700000000", "700 MB"))),
            *_of_the_family(collection),
            Blank("read", "Have you read who is named (names-found.csv)?", "no", choices=YES_NO),
        ],
        _transfer,
    ),
    "receipt": Task(
        Group.HAND_ON,
        "The archive’s receipt",
        "its own numbers, taken in",
        lambda collection: [
            file_blank(collection, "file", "The receipt that came back", "", "A CSV."),
            Blank("name", "What is the archive called?"),
        ],
        _receipt,
        writes=True,
    ),
    "answer_archive": Task(
        Group.HAND_ON,
        "An answer to the archive",
        "to what it remarked",
        lambda collection: [
            Blank("item", "Of which photograph?", "", "Its number, or its box, folder and place. Empty: of the whole."),
            Blank("text", "What do you answer?", "", "It goes with the next update."),
        ],
        _answer_archive,
        writes=True,
        is_step=True,
    ),
    "proved": Task(
        Group.HAND_ON,
        "Check copies or a transfer",
        "every byte, every caption",
        lambda collection: [folder_blank(collection, "folder", "Which folder?", "copies")],
        _proved,
    ),
}  # fmt: skip
