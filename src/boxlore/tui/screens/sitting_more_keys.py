"""What the sitting's screen does beyond one answer: over several items, with the teller, and about the questions."""

from textual.message import Message

from boxlore.core.errors import BoxloreError
from boxlore.core.findings import several
from boxlore.core.statements import Kind
from boxlore.tasks.collection.prompts import write_prompts
from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.sitting.linking import RELATIONS, relate, same_as
from boxlore.tasks.sitting.session import COME_BACK, Sitting
from boxlore.tasks.sitting.who_said_it import give, waiting
from boxlore.tui.screens.cards import NOWHERE, Choice, Choices
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.several_items import same_choices
from boxlore.tui.screens.sitting_view import ItemView
from boxlore.tui.screens.tellers import ask_teller
from boxlore.tui.widgets.prompt_block import Block


class ItemOver(ItemView):
    """The screen with what waits for the keys typed before it, and what is done over items and with tellers."""

    class Emptied(Message):
        """The last item of the collection was taken back."""

        def __init__(self, sitting: Sitting, listing: Listing) -> None:
            super().__init__()
            self.sitting, self.listing = sitting, listing

    _items_turned = 0

    def refresh_record(self) -> None:
        """Read the item again and show it; where an intake was taken back with it, the one that stands nearest."""
        if self._items_turned == self.sitting.steps.items_turned:
            super().refresh_record()
            return
        self._items_turned = self.sitting.steps.items_turned
        self.listing.reload()
        self.way = None  # its positions are of the list as it was
        at = self.listing.position(self.record.id)
        if at >= 0:
            self.position = at
            super().refresh_record()
        elif len(self.listing):
            self.open(min(self.position, len(self.listing) - 1))
        else:
            self.post_message(self.Emptied(self.sitting, self.listing))
        if self.listing.position(self.before) < 0:
            self.before = self.record.id  # nothing was shown before

    @property
    def block(self) -> Block:
        """The block of the prompt that has the cursor; the first one if none has it."""
        return next((block for block in self.blocks if block.words is self.focused), self.blocks[0])

    async def settled(self, *, turning: bool = False) -> bool:
        """Wait until every key is typed in, then keep the words of all prompts. False if some could not be kept.

        `turning`: another item is shown next, so this one is not drawn again.
        """
        block = self.block
        await block.words.drained()
        all_kept = [self.keep(block, redraw=not turning) for block in self.blocks if self.sitting.writable]
        return all(all_kept)

    async def can_write(self, block: Block) -> bool:
        if not self.sitting.writable:
            self.say("Open for reading only; nothing can be changed.", bad=True)
            return False
        await block.words.drained()
        return self.keep(block)

    # over items

    async def action_same(self) -> None:
        if not await self.can_write(self.block):
            return
        if self.before == self.record.id:
            self.say("F8 takes over from the photograph looked at before; there is none yet.")
            return
        record, previous = self.record, self.sitting.record(self.before)

        def answer(shared: str) -> None:
            try:
                count = same_as(self.sitting, [record], previous, shared)
            except BoxloreError as error:
                self.say(str(error), bad=True)
                return
            self.refresh_record()
            self.say(f"{count} taken over from {previous.number}. Ctrl+Z takes it back.")

        choices = same_choices(previous)
        if not choices:
            self.say(f"Nothing is told of {previous.number} that could be the same here.")
            return
        await self.app.push_screen(Choices(f"As in {previous.number}", choices, answer, at=NOWHERE))

    async def action_relate(self) -> None:
        """Ask how this item is related to which other one."""
        if not await self.can_write(self.block):
            return
        record = self.record

        async def chosen(kind: str) -> None:
            def answer(answers: dict[str, str]) -> str:
                try:
                    number = relate(self.sitting, record, answers["other"], kind)
                except BoxloreError as error:
                    return str(error)
                self.refresh_record()
                self.say(f"{RELATIONS[kind]} {number}. Ctrl+Z takes it back.")
                return ""

            previous = self.sitting.record(self.before).number if self.before != record.id else ""
            blank = Blank("other", "Which photograph?", previous, "Its number (TRA-0042) or where it is kept (3/12/4).")
            await Form(f"{record.number}: {RELATIONS[kind].lower()} …", [blank], answer).open(self.app)

        choices = [Choice(kind, words) for kind, words in RELATIONS.items()]
        await self.app.push_screen(Choices(f"{record.number} and another", choices, chosen))

    async def action_prompts(self) -> None:
        """Write the questions to a file that the keeper may edit, and say where it is."""
        if not self.sitting.writable:
            self.say("Open for reading only; nothing can be changed.", bad=True)
            return
        path = write_prompts(self.sitting.collection.folder, self.sitting.collection.settings.language)
        self.say(f"The questions are in {path}. Edit it with any editor of plain text; open Boxlore again after that.")

    async def action_course(self) -> None:
        """Show the card of the sitting's own steps: agreement, rest, recording, close."""
        from boxlore.tui.screens.sitting_steps import open_course

        if await self.settled():
            await open_course(self)

    async def action_ask_later(self) -> None:
        if not await self.can_write(self.block):
            return
        record = self.record

        def answer(answers: dict[str, str]) -> str:
            self.sitting.ask_later(record, answers["words"])
            self.refresh_record()
            self.say(f"Noted: {answers['words'] or COME_BACK}. F3 and Tab show it under “to ask”.")
            return ""

        blank = Blank("words", "What is to be asked, or whom?", COME_BACK, "For instance: ask Joan.")
        await Form(f"Ask later: {record.number}", [blank], answer).open(self.app)

    async def action_set_aside(self) -> None:
        """Ask why, and put the item aside for now."""
        if not await self.can_write(self.block):
            return
        record = self.record

        def answer(answers: dict[str, str]) -> str:
            self.sitting.set_aside(record, answers["why"])
            self.refresh_record()
            self.say(f"{record.number} is set aside. F3 and Tab show it under “to ask”; Ctrl+Z takes it back.")
            return ""

        blank = Blank("why", "Why?", "", "For instance: too sad today. May stay empty.")
        await Form(f"Set aside: {record.number}", [blank], answer).open(self.app)

    # who tells

    async def action_tellers(self) -> None:
        """Ask who tells now; what was told before anybody was named can be given to her."""
        if not await self.can_write(self.block):
            return

        async def then() -> None:
            self.refresh_record()
            if self.sitting.id and waiting(self.sitting):
                await self._offer_waiting()
            else:
                self.say(self._who_tells())

        await ask_teller(self.app, self.sitting, then)

    def _who_tells(self) -> str:
        if self.sitting.id:
            return f"{self.sitting.teller_named} tells. Times are noted."
        return "You tell." if self.sitting.myself else "Nobody is named yet. Answers wait for a teller: Esc, “Sit”."

    async def _offer_waiting(self) -> None:
        """Ask whether the answers kept before were told by the one who tells now."""
        told = waiting(self.sitting)
        count = sum(1 for each in told if each.subject.kind in (Kind.ITEM, Kind.MARKER))  # not who came of an answer
        kept = "One answer was" if count == 1 else f"{count} answers were"

        def answer(value: str) -> None:
            if value == "hers":
                give(self.sitting, self.record.id)
                self.listing.reload()
                self.refresh_record()
                stand = several(count, "answer now stands", "answers now stand")
                self.say(f"{stand} under {self.sitting.teller_named}. Ctrl+Z takes it back.")
            else:
                self.sitting.waiting.clear()

        choices = [
            Choice("hers", f"Yes, all are told by {self.sitting.teller_named}"),
            Choice("mine", "No, they stay under the keeper"),
        ]
        title = f"{kept} kept before anybody was named. Who told them?"
        await self.app.push_screen(Choices(title, choices, answer, at=NOWHERE))

    async def action_asking(self) -> None:
        """Show what to ask the one who tells."""
        if await self.settled():
            from boxlore.tui.screens.what_to_ask import AskScreen

            await self.app.push_screen(AskScreen(self))

    def _open_item(self, item: str) -> None:
        position = self.listing.position(item)
        if position >= 0:
            self.open(position)

    def show_item(self, item: str, field: str = "") -> None:
        """Show an item, put away the screens above this one, and put the cursor into the prompt of this field."""
        while self.app.screen is not self:
            self.app.pop_screen()
        self._open_item(item)
        for block in self.blocks:
            if block.prompt.field == field:
                block.enter()
                self.set_focus(block.words)
        for block in self.blocks:
            block.draw()

    async def action_worked_out(self) -> None:
        """Show the dates that follow from everything told."""
        if await self.settled():
            from boxlore.tui.screens.worked_out import WorkedOutScreen

            await self.app.push_screen(WorkedOutScreen(self))

    async def action_check(self) -> None:
        """Show what is most worth doing."""
        if await self.settled():
            from boxlore.tui.screens.check import CheckScreen

            await self.app.push_screen(CheckScreen(self))

    async def action_originals(self) -> None:
        """Show what the originals need."""
        if await self.settled():
            from boxlore.tui.screens.check import OriginalsScreen

            await self.app.push_screen(OriginalsScreen(self))

    # putting right

    async def action_people(self) -> None:
        """Show everyone in the registry."""
        if await self.settled():
            from boxlore.tui.screens.people import PeopleScreen

            await PeopleScreen(self).show()

    async def action_told_words(self, field: str, title: str) -> None:
        """Show the places, or the occasions, as they were told."""
        if await self.settled():
            from boxlore.tui.screens.words_told import WordsToldScreen

            await WordsToldScreen(self, field, title).show()

    async def action_events(self) -> None:
        """Show what happened to the family, in order."""
        if await self.settled():
            from boxlore.tui.screens.events import EventsScreen

            await self.app.push_screen(EventsScreen(self))

    async def action_duplicates(self) -> None:
        """Show who may be one and the same."""
        if await self.can_write(self.block):
            from boxlore.tui.screens.duplicates import ask_pairs

            await ask_pairs(self)
