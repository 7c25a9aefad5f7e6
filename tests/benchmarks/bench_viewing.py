"""How fast the viewing page follows: from the keeper's item to the picture decoded in a headless browser.

    python tests/benchmarks/bench_viewing.py

Budget 200 ms at the 95th percentile. Peer of the same run: the bare time to make the same JPEG.
"""

import sys
import tempfile
import time
from pathlib import Path

from boxlore.disk.pictures import make_jpeg
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.given_files import files_given
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting.tellers_page import SIZES
from boxlore.viewing.server import serving

sys.path.insert(0, str(Path(__file__).parents[1] / "viewing"))
from conftest import Browser, Keeper, draw

COUNT, ROUNDS = 24, 40


def percentile(values: list[float], share: float) -> float:
    return sorted(values)[min(int(len(values) * share), len(values) - 1)]


def main() -> None:
    """Make pictures of 4000 × 3000 pixels, turn through them, print the figures."""
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as home:
        scans = Path(home) / "incoming"
        scans.mkdir()
        for count in range(COUNT):
            draw(scans / f"picture{count:02d}_f.jpg", str(count), (4000, 3000))
        folder = Path(home) / "tamm_family"
        start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
        with open_collection(folder) as collection:
            list(take_in(collection, by_suffix(files_given([scans]).pictures), IntakeOptions(copy=True)))
            keeper = Keeper(collection)
            alone = []
            for scan in [keeper.sitting.record(item).scans[0] for _, item in collection.store.items()[:8]]:
                began = time.perf_counter()
                make_jpeg(collection.folder / scan.path, SIZES["screen"])
                alone.append(time.perf_counter() - began)
            browser = Browser(Path(home) / "browser")
            with serving(keeper.showing):
                page = browser.page()
                page.open(keeper.showing.address)
                page.wait_for("document.body && document.body.dataset.shown")
                heads, pictures = turn(keeper, page)
                page.close()
            browser.close()
    peer = percentile(alone, 0.5) * 1000
    for name, values in (("words and number", heads), ("picture decoded", pictures)):
        p50, p95 = percentile(values, 0.5) * 1000, percentile(values, 0.95) * 1000
        print(f"{name}: median {p50:.0f} ms, 95th percentile {p95:.0f} ms (budget 200)")
    print(f"peer, making the JPEG alone: {peer:.0f} ms; ratio {percentile(pictures, 0.5) * 1000 / peer:.1f}")


def turn(keeper: Keeper, page: object) -> tuple[list[float], list[float]]:
    """Seconds until the page shows the item's number, and until its picture is decoded."""
    heads, pictures = [], []
    for count in range(ROUNDS):
        number = count % COUNT + 1
        if number == 1 and count == 0:
            continue
        wait = f"""new Promise((done) => {{ const look = () => {{
            const at = document.getElementById('heading').textContent.startsWith('TRA-{number:04d}');
            if (at && !window.head) window.head = Date.now();
            if (at && !document.getElementById('picture').hidden && document.body.dataset.shown !== window.was)
              done([window.head, Date.now()]);
            else setTimeout(look, 1); }};
            window.head = 0; window.was = document.body.dataset.shown; look(); }})"""
        page._count += 1  # type: ignore[attr-defined]  # the page's own counter: asked now, answered later
        asked = page._count  # type: ignore[attr-defined]  # the same
        page.send(asked, "Runtime.evaluate", expression=wait, returnByValue=True, awaitPromise=True)  # type: ignore[attr-defined]  # a Page
        time.sleep(0.1)
        began = time.time()
        keeper.out(number)
        head, shown = page.answer(asked)["result"]["value"]  # type: ignore[attr-defined]  # a Page
        heads.append(head / 1000 - began)
        pictures.append(shown / 1000 - began)
        following = keeper.sitting.collection.store.item_by_number(f"TRA-{number % COUNT + 1:04d}")
        keeper.showing.expect(keeper.sitting.record(following or ""))  # as the keeper's screen does, in its own time
    return heads, pictures


if __name__ == "__main__":
    main()
