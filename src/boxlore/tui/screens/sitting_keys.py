"""What the keys of the sitting's screen do.

The rule that every action keeps: it first waits until the keys pressed before it have been typed into the focused
prompt, then keeps the prompt's words, then moves the focus at once. So no word lands on the next photograph.
"""

from functools import partial

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.language_names import language_name
from boxlore.core.records.item_record import StatementView
from boxlore.core.statements import Sure
from boxlore.tasks.sitting import correcting
from boxlore.tasks.sitting.beginning import next_open
from boxlore.tasks.sitting.session import AUDIENCES, SURENESSES
from boxlore.tasks.telling.undoing import Done
from boxlore.tui.keys import ITEM_KEYS, bindings
from boxlore.tui.screens.audience_lines import for_whom
from boxlore.tui.screens.cards import Choice, Choices, Notice
from boxlore.tui.screens.find import FindScreen
from boxlore.tui.screens.forms import Form
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.screens.language_line import language_blank, language_read
from boxlore.tui.screens.large_picture import LargeScreen
from boxlore.tui.screens.menu import open_menu
from boxlore.tui.screens.open_questions import ask_all, ask_at
from boxlore.tui.screens.sitting_more_keys import ItemOver
from boxlore.tui.screens.statements import SaidScreen
from boxlore.tui.widgets.prompt_block import Block


class ItemScreen(ItemOver):
    """The screen with its keys. `tui.keys.ITEM_KEYS` says in words what the action of each key does."""

    BINDINGS = bindings(ITEM_KEYS)

    # from item to item

    async def action_next_item(self) -> None:
        await self.turn_item(1)

    async def action_item_before(self) -> None:
        await self.turn_item(-1)

    async def turn_item(self, by: int) -> None:
        """Show the next photograph (`by` 1), or the one before, once the words of this one are kept."""
        settled = await self.settled(turning=True)
        position = self._following(by)
        if settled and position is not None:
            self.open(position)
            return
        self.refresh_record()
        if settled:
            self.set_focus(self.blocks[0].words)
            where = f" in {self.way.name}; Ctrl+N shows the next with an answer missing" if self.way else " photograph"
            self.say(f"That was the last{where}." if by > 0 else f"This is the first{where}.")

    def _following(self, by: int) -> int | None:
        """The position of the next item (`by` 1) or the one before (-1), along the way if there is one."""
        if self.way is not None:
            return self.way.after(self.position, by)
        position = self.position + by
        return position if 0 <= position < len(self.listing) else None

    async def action_next_open(self) -> None:
        """Show the next photograph with an answer missing; from there PgDn goes through all of them again."""
        if not await self.settled(turning=True):
            return
        position = next_open(self.listing, self.position + 1)
        if position is None or position == self.position:
            self.refresh_record()
            self.say("No further photograph with an answer missing was found. F3 and Tab list them by what is told.")
            return
        self.way = None
        self.open(position)

    async def action_leave(self) -> None:
        """Leave, once everything is kept."""
        await self.app.run_action("leave")

    async def action_save(self) -> None:
        if await self.settled():
            self.say("Saved." if self.sitting.writable else "Open for reading only; nothing can be kept.")

    # from prompt to prompt

    async def action_tab(self) -> None:
        block = self.block
        await block.words.drained()
        if block.suggestions and block.changed:
            self._accept(block)
        else:
            self._step(block, 1)

    async def action_prompt_before(self) -> None:
        block = self.block
        await block.words.drained()
        self._step(block, -1)

    async def action_enter(self) -> None:
        block = self.block
        await block.words.drained()
        if block.prompt.lines > 1:
            if not block.words.read_only:
                block.words.put("\n")
        elif block.prompt.gathers and block.changed:
            self.keep(block)
        else:
            self._step(block, 1)

    async def action_up(self) -> None:
        block = self.block
        await block.words.drained()
        if block.suggestions and block.changed:
            block.turn(-1)
        elif block.words.on_first_line:
            self._step(block, -1)
        else:
            block.words.action_cursor_up()

    async def action_down(self) -> None:
        block = self.block
        await block.words.drained()
        if block.suggestions and block.changed:
            block.turn(1)
        elif block.words.on_last_line:
            self._step(block, 1)
        else:
            block.words.action_cursor_down()

    def _step(self, block: Block, by: int) -> None:
        if self.sitting.writable and not self.keep(block):
            return
        at = (self.blocks.index(block) + by) % len(self.blocks)
        self.blocks[at].enter()
        self.set_focus(self.blocks[at].words)
        block.draw()
        self.blocks[at].draw()
        self.refresh(layout=True)  # at once: what they say below their words would else come a frame later

    def _accept(self, block: Block) -> None:
        """Take the first suggestion: a person is kept as an answer at once, a place is only put into the words."""
        ident, words = block.suggestions[0]
        head = [part for part in block.text.split(";")[:-1] if part.strip()]
        block.words.load("; ".join([*(part.strip() for part in head), words]))
        block.suggest([])
        if ident and not head:
            self.keep(block, person=ident)
        else:
            self.typed(block)
            block.suggest([])
            block.draw()

    # one statement

    async def action_not_known(self) -> None:
        block = self.block
        if not await self.can_write(block):
            return
        if block.text.strip():
            self.say("There are words in this answer. “Not known” is for when there is nothing to say.", bad=True)
            return
        self.sitting.not_known(self.record, block.prompt)
        self.refresh_record()
        self.say(f"{block.prompt.question} Asked, not known.")
        self._step(block, 1)

    async def action_audience(self) -> None:
        block = self.block
        if await self.can_write(block) and (view := self._meant(block)) is not None:
            level = view.audience.partition(":")[0]
            narrower = AUDIENCES[AUDIENCES.index(level) + 1 :] if level in AUDIENCES else ()
            if not narrower:  # one key too many opens nothing that was to stay closed
                self.say(f"{_quoted(view)} is {for_whom(view.audience)} already. F4, “Who may see it” opens it again.")
                return
            audience = narrower[0]
            self._change(view, f"{_quoted(view)}: {for_whom(audience)}.", audience=audience)

    async def action_which(self) -> None:
        """Ask which date, place or person is meant, or how a name is taken apart."""
        if await self.can_write(self.block):
            await ask_at(self, self.block)

    async def action_worth_asking(self) -> None:
        """Show all that is worth asking about this photograph."""
        if await self.can_write(self.block):
            await ask_all(self)

    async def action_language(self) -> None:
        """Ask for a language: of the answer in this prompt, and of everything told from now on."""
        block = self.block
        if not await self.can_write(block):
            return
        own = self.sitting.own(self.record, block.prompt)

        def answer(answers: dict[str, str]) -> str:
            tag, fault = language_read(answers["tag"])
            if fault:
                return fault
            self.sitting.language = tag
            if own is not None and own.language != tag:
                self._change(
                    own, f"{_quoted(own)}: told in {language_name(tag)}, and so is what follows.", language=tag
                )
            else:
                self.say(f"From now on the words are noted as told in {language_name(tag)}.")
            return ""

        await Form("Language told in", [language_blank(self.sitting.language)], answer).open(self.app)

    async def action_sure(self) -> None:
        block = self.block
        if await self.can_write(block) and (view := self._meant(block)) is not None:
            at = SURENESSES.index(view.sure) if view.sure in SURENESSES else -1
            sureness = SURENESSES[(at + 1) % len(SURENESSES)]
            self._change(view, f"{_quoted(view)}: {_SURE[sureness]}.", sure=sureness)

    def _meant(self, block: Block) -> StatementView | None:
        """The statement that F6, F7 and Ctrl+L change: this teller's answer; where answers gather, the last of them."""
        own = self.sitting.own(self.record, block.prompt)
        if own is None and block.prompt.gathers:
            source = self.sitting.source_of(block.prompt)
            mine = [view for view in self.record.all(block.prompt.field) if view.source == source]
            own = mine[-1] if mine else None
        if own is None:
            self.say("Nothing is told here yet. Say it first; F4 shows what others said.", bad=True)
        return own

    def _change(self, view: StatementView, words: str, **changes: str) -> None:
        try:
            correcting.change(self.sitting, self.record, view, **changes)
        except BoxloreError as error:
            self.say(str(error), bad=True)
            return
        self.refresh_record()
        self.say(words)

    async def action_undo(self) -> None:
        block = self.block
        await block.words.drained()
        if not self.sitting.writable:
            return
        if block.changed:
            self._put_back(block)
            self.say("Taken back: what was being typed.")
            return
        self._moved(self.sitting.undo(), "Taken back", "Nothing of this sitting is left to take back.")

    def _put_back(self, block: Block) -> None:
        """Put the words that are kept into the prompt again, in place of those being typed."""
        block.words.load(block.baseline)
        self.typed(block)

    async def action_redo(self) -> None:
        if await self.can_write(self.block):
            self._moved(self.sitting.redo(), "Done again", "Nothing was taken back.")

    def _moved(self, act: Done | None, verb: str, otherwise: str) -> None:
        """After undo or redo: show the item it was about, and say what was done; `otherwise` if nothing was."""
        if act is None:
            self.say(otherwise)
            return
        position, where = self.listing.position(act.item), ""
        if act.item != self.record.id and position >= 0:
            self.open(position)
            where = f" at {self.record.number}, which is on the screen again"
        else:
            self.refresh_record()
        self.say(f"{verb}{where}: {act.in_words.removesuffix('.')}.")

    # other screens

    async def action_guide(self) -> None:
        await self.block.words.drained()
        await self.app.push_screen(GuideScreen())

    async def action_picture(self) -> None:
        await self.block.words.drained()
        if self.showing.is_covered(self.record.id):
            self.showing.uncover()
            self.show_picture()
            self.say(f"Care: {self.record.words('care')}  F2 again shows the picture large.")
            return
        await self.app.push_screen(LargeScreen(self))

    async def action_viewing(self) -> None:
        """Show the address of the teller's page, and its square code for a camera."""
        showing = self.showing
        if not showing.address:
            self.say("There is no page: it was started with --no-viewing, or from the list of collections.")
            return

        def answer(value: str) -> None:
            self.run_worker(partial(self._serve, value == "tablet"), thread=True, exit_on_error=False)

        on_network = bool(showing.code)
        here = "nothing leaves it; closes the page on the network" if on_network else "nothing leaves it"
        choices = [
            Choice("here", "In a browser on this machine", here),
            Choice("tablet", "On a tablet beside you", "by this network, not encrypted"),
        ]
        below = "The page is open to this network now." if on_network else ""
        await self.app.push_screen(Choices("Where does the teller look at the page?", choices, answer, below=below))

    def _serve(self, to_network: bool) -> None:
        """Serve the page to the local network, or to this machine alone, in a thread, and show where it is. One on
        the network that is wanted there stays as it is."""
        if not (to_network and self.showing.code):
            try:
                self.showing.to_network(to_network)
            except BoxloreError as error:
                self.app.call_from_thread(self.say, str(error), bad=True)
                return
        self.app.call_from_thread(lambda: self.app.run_worker(self._show_address(), exit_on_error=False))

    async def _show_address(self) -> None:
        showing = self.showing
        lookers = f"{showing.lookers} looking now" if showing.lookers else "Nobody is looking yet"
        how = (
            "Not encrypted: this network could read along."
            if showing.code
            else "Open it in a browser on this machine; nothing leaves it."
        )
        code = [(showing.code, "#ffffff on #000000")] if showing.code else []
        notice = Notice(f"The teller’s page: {showing.address}", f"{lookers}. {how}\n", *code)
        notice.goes_back(self.action_viewing)
        await self.app.push_screen(notice)

    async def action_find(self) -> None:
        if await self.settled():
            await FindScreen(self.sitting, self.listing, self.position, self.open, self.picked).show(self.app)

    async def action_said(self) -> None:
        """Show who says what. An answer that was emptied and may not be is put back first, for here it is taken
        back."""
        if not await self.settled():
            for block in self.blocks:
                if block.changed and not block.text.strip():
                    self._put_back(block)
        if await self.settled():
            await self.app.push_screen(SaidScreen(self.sitting, self.record, self.refresh_record))

    async def action_menu(self) -> None:
        block = self.block
        await block.words.drained()
        if block.suggestions and block.changed:
            block.suggest([])
            block.draw()
        elif await self.settled():
            await open_menu(self)


_SURE = {Sure.SURE: "sure", Sure.LIKELY: "likely", Sure.GUESS: "a guess"}


def _quoted(view: StatementView) -> str:
    words = " ".join(view.words.split())
    return f"“{words[:60]}…”" if len(words) > 60 else f"“{words}”"
