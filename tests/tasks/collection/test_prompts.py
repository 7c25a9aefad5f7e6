"""The prompts as a file. Outside truth: Python's own TOML reader (TOML 1.0)."""

import tomllib
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.prompts import FILE_NAME, PROMPTS, as_toml, read_prompts, write_prompts
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.sitting.session import Sitting


def test_the_file_written_is_the_file_read(tmp_path: Path) -> None:
    assert read_prompts(tmp_path) == PROMPTS
    assert [block["field"] for block in tomllib.loads(as_toml())["prompt"]] == [prompt.field for prompt in PROMPTS]
    write_prompts(tmp_path)
    assert read_prompts(tmp_path) == PROMPTS
    (tmp_path / FILE_NAME).write_text("# mine\n" + as_toml(PROMPTS[:1]))
    write_prompts(tmp_path)
    assert read_prompts(tmp_path) == PROMPTS[:1]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("[[prompt", "cannot be read"),
        ("", "must hold one to 40"),
        ("x = 1", "must hold"),
        ("[[prompt]]\nfield = 'story'", "lacks its question"),
        ("[[prompt]]\nfield = 'colour'\nquestion = 'x'", "there is no field “colour”"),
        ("[[prompt]]\nfield = 'number'\nquestion = 'x'", "there is no field “number”"),
        ("[[prompt]]\nfield = 'own-Ä b'\nquestion = 'x'", "there is no field"),
        ("[[prompt]]\nfield = 3\nquestion = 'x'", "“field” cannot be 3"),
        ("[[prompt]]\nfield = 'story'\nquestion = 'x'\nlines = true", "“lines” cannot be"),
        ("[[prompt]]\nfield = 'story'\nquestion = 'x'\n" * 2, "asks twice"),
        ("prompt = [1]", "is no block"),
    ],
)
def test_what_is_wrong_is_said(tmp_path: Path, text: str, said: str) -> None:
    (tmp_path / FILE_NAME).write_text(text)
    with pytest.raises(WrongUse, match=said):
        read_prompts(tmp_path)


def test_a_question_of_ones_own_becomes_a_statement(tmp_path: Path) -> None:
    made = tmp_path / "tamm_family"
    start(made, Settings(title="Tamm and Rourke", prefix="TR"))
    own = "[[prompt]]\nfield = 'own-clothes'\nquestion = 'Mis teil seljas oli?'\nlines = 99\n"
    (made / FILE_NAME).write_text(own)
    with open_collection(made) as collection:
        act = collection.act("intake")
        item = act.new(Kind.ITEM)
        act.state(item, "number", "TRA-0001")
        act.done()
        sitting = Sitting(collection, narrator="Ellen Rourke")
        sitting.begin()
        [prompt] = sitting.prompts
        assert prompt.lines == 20
        sitting.draft(item.id, prompt, "Sini")
        assert sitting.keep(sitting.record(item.id), prompt, "Sinine kleit.")
        told = sitting.record(item.id).first("own-clothes")
        assert told is not None
        assert (told.words, told.said_by) == ("Sinine kleit.", "Ellen Rourke")
        assert sitting.own(sitting.record(item.id), prompt) == told
        assert collection.store.search("sinine")[0].number == "TRA-0001"


def test_a_faulty_file_does_not_stop_a_sitting(tmp_path: Path) -> None:
    start(tmp_path / "c", Settings(title="Tamm and Rourke", prefix="TR"))
    (tmp_path / "c" / FILE_NAME).write_text("[[prompt")
    with open_collection(tmp_path / "c") as collection:
        sitting = Sitting(collection)
        assert sitting.prompts == PROMPTS
        assert "cannot be read" in sitting.prompts_fault
