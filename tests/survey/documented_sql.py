# Runs every query that docs/survey.md shows on a survey of two songs: documented_sql.py PROGRAM SOURCE_DIR
import pathlib
import re
import sqlite3
import subprocess
import sys
import tempfile

program, source = sys.argv[1], pathlib.Path(sys.argv[2])
text = (source / "docs/survey.md").read_text(encoding="utf-8")
blocks = re.findall(r"(?:^    .*\n)+", text, flags=re.M)
queries = [block for block in blocks if block.strip().startswith("SELECT")]
assert len(queries) >= 4, f"only {len(queries)} queries found"
with tempfile.TemporaryDirectory() as folder:
    songs = pathlib.Path(folder) / "songs"
    songs.mkdir()
    for song in ["charts/demo/giusto_amor.mxl", "tests/data/scores/lieder/satie_omnibus.mxl"]:
        (songs / pathlib.Path(song).name).write_bytes((source / song).read_bytes())
    (songs / "broken.mxl").write_text("broken")
    file = pathlib.Path(folder) / "songs.db"
    subprocess.run([program, "survey", songs, "--singers", source / "charts/demo", "--keys", "-1..1", "-o", file], check=True,
                   stderr=subprocess.DEVNULL)
    base = sqlite3.connect(file)
    for query in queries:
        rows = base.execute(query).fetchall()
        assert rows, f"no answer to\n{query}"
    columns = [row[1] for row in base.execute("PRAGMA table_info(plans)")]
    told = set(re.findall(r"\w+", " ".join(re.findall(r"`([^`]*)`", text))))
    missing = [c for c in columns if c not in told and not c.startswith("need_")]
    assert not missing, f"docs/survey.md does not tell of {missing}"
print(f"{len(queries)} queries answered, {len(columns)} columns told")
