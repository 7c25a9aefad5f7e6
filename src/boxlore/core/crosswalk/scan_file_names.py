"""What the files of scans are called in a package: by what never changes, the item's number, the side and the role."""

from boxlore.core.records.item_record import AS_SCANNED, Record, ScanFile


def packed_path(record: Record, scan: ScanFile) -> str:
    """The path of a scan in a package, such as `scans/TRA-0042_f.jpg`.

    path   = "scans/" base ["-" count] "." suffix   ; count from 2, for a further scan of the same base
    base   = number "_" side ["_" role]             ; the role only of a scan that is not as scanned
           / first 12 digits of the SHA-256 "_sheet"    ; a scan that shows several items belongs to none alone
    side   = "f" front / "b" back
    suffix = that of the file, else "bin"
    """
    named = [_base(record, earlier) for earlier in record.scans[: _place(record, scan) + 1]]
    again = named.count(named[-1])
    suffix = scan.path.rpartition(".")[2].lower() if "." in scan.path.rpartition("/")[2] else "bin"
    return f"scans/{named[-1]}{f'-{again}' if again > 1 else ''}.{suffix}"


def _place(record: Record, scan: ScanFile) -> int:
    return next((at for at, candidate in enumerate(record.scans) if candidate.id == scan.id), 0)


def _base(record: Record, scan: ScanFile) -> str:
    if scan.area:
        return f"{scan.sha256[:12]}_sheet"
    side = "f" if scan.side == "recto" else "b"
    altered = "" if scan.role == AS_SCANNED else f"_{''.join(c if c.isalnum() else '-' for c in scan.role)}"
    return f"{record.number}_{side}{altered}"
