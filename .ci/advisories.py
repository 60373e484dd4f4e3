"""Packs a clone of the RustSec advisory database into .ci/advisories.tar.gz.

Usage: python3 .ci/advisories.py CLONE

Kept of each advisory: its data block and its title, for every package, so that a new dependency is covered too.
Left out: the prose and the links, which only people read; each advisory's own page has them.
The database is in the public domain (CC0-1.0); entries adapted from another database are marked CC-BY-4.0 in their block.
"""

import gzip
import io
import pathlib
import re
import subprocess
import sys
import tarfile


def trimmed(text: str) -> str:
    """The data block and the title of one advisory."""
    block = re.match(r"```toml\n.*?\n```\n", text, re.S)
    title = re.search(r"^# .+$", text[block.end():] if block else text, re.M)
    if not block or not title:
        raise ValueError("an advisory without a data block or a title")
    data = re.sub(r'^url = "[^"]*"\n', "", block.group(0), flags=re.M)
    data = re.sub(r"^references = \[.*?\]\n", "", data, flags=re.M | re.S)
    data = re.sub(r"^#.*\n", "", data, flags=re.M)
    return f"{data}\n{title.group(0)}\n"


def packed(clone: pathlib.Path) -> bytes:
    """A tar archive that is the same for the same clone."""
    commit, day = subprocess.run(
        ["git", "-C", str(clone), "log", "-1", "--format=%H %cs"], check=True, capture_output=True, text=True
    ).stdout.split()
    names = subprocess.run(
        ["git", "-C", str(clone), "ls-tree", "-r", "--name-only", "HEAD", "crates", "support.toml"],
        check=True, capture_output=True, text=True,
    ).stdout.split()
    out = io.BytesIO()
    with tarfile.open(fileobj=out, mode="w", format=tarfile.USTAR_FORMAT) as tar:
        def add(name: str, text: str) -> None:
            data = text.encode()
            entry = tarfile.TarInfo(name)
            entry.size = len(data)
            tar.addfile(entry, io.BytesIO(data))

        add("AS-OF", f"{day} {commit}\n")
        for name in sorted(names):
            text = subprocess.run(
                ["git", "-C", str(clone), "show", f"HEAD:{name}"], check=True, capture_output=True, text=True
            ).stdout
            add(name, trimmed(text) if name.endswith(".md") else text)
    return out.getvalue()


if len(sys.argv) != 2:
    sys.exit(__doc__)
target = pathlib.Path(__file__).with_name("advisories.tar.gz")
with target.open("wb") as raw, gzip.GzipFile(fileobj=raw, mode="wb", mtime=0, filename="") as zipped:
    zipped.write(packed(pathlib.Path(sys.argv[1])))
print(f"{target.name}: {target.stat().st_size // 1024} KiB")
