#!/bin/bash
# slurm.sh PROGRAM: a survey as an array of tasks under Slurm, on this machine alone. A task is killed, and the
# controller while others run; the parts merged must be, byte for byte, what one process finds. Needs root (munged and
# slurmd want it) and the packages of tests/packages.txt.
set -euo pipefail
if [ "$(id -u)" != 0 ] || ! command -v slurmctld > /dev/null; then
    echo "left out: Slurm and its daemons need root and the packages of tests/packages.txt"
    exit 0
fi
program=$(realpath "$1")
source=$(cd "$(dirname "$0")/../.." && pwd)
folder=$(mktemp -d /tmp/vowelway-slurm.XXXXXX)
chmod 755 "$folder"
cd "$folder"
mkdir spool state run

stop() {
    for name in slurmctld slurmd munged; do
        if [ -f "run/$name.pid" ]; then kill -9 "$(cat "run/$name.pid")" 2>/dev/null || true; fi
    done
    rm -rf "$folder"
}
trap stop EXIT

# Plans in a part that nobody has finished.
sqlite3_rows() { "$program" survey show "$1" --as csv 2>/dev/null | tail -n +2 | wc -l; }

# Keys and sockets of our own: nothing of the system's is touched.
dd if=/dev/urandom of=munge.key bs=1 count=1024 status=none
chmod 400 munge.key
munged --key-file=munge.key --socket="$folder/munge.socket" --pid-file="$folder/run/munged.pid" --log-file="$folder/munged.log" \
    --seed-file="$folder/munge.seed" --force 2>>start.log
cat > slurm.conf <<EOF
ClusterName=one
SlurmctldHost=$(hostname -s)(127.0.0.1)
SlurmctldPort=16817
SlurmdPort=16818
AuthType=auth/munge
AuthInfo=socket=$folder/munge.socket
CredType=cred/munge
SlurmUser=root
StateSaveLocation=$folder/state
SlurmdSpoolDir=$folder/spool
SlurmctldPidFile=$folder/run/slurmctld.pid
SlurmdPidFile=$folder/run/slurmd.pid
SlurmctldLogFile=$folder/slurmctld.log
SlurmdLogFile=$folder/slurmd.log
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
SelectType=select/cons_tres
SelectTypeParameters=CR_CPU
ReturnToService=2
MpiDefault=none
JobRequeue=1
NodeName=$(hostname -s) NodeAddr=127.0.0.1 CPUs=$(nproc) RealMemory=4000 State=UNKNOWN
PartitionName=all Nodes=ALL Default=YES MaxTime=INFINITE State=UP
EOF
export SLURM_CONF=$folder/slurm.conf
slurmctld 2>>start.log
slurmd 2>>start.log
for _ in $(seq 50); do
    if sinfo -h -o %T 2>/dev/null | grep -q idle; then break; fi
    sleep 0.2
done
if ! sinfo -h -o %T 2>/dev/null | grep -q idle; then # a machine that lets no daemon work says nothing about us
    tail -5 start.log slurmctld.log slurmd.log
    echo "left out: Slurm does not start on this machine"
    exit 0
fi

songs=$source/tests/data/scores/lieder
singers="bass baritone tenor alto mezzo soprano"
options="--draws 60 --keys -12..12" # long enough to be stopped in the middle
tasks=3
"$program" survey "$songs" --singers $singers $options -o whole.db 2>/dev/null

sed "s/^#SBATCH --array=.*/#SBATCH --array=1-$tasks/" "$source/docs/survey.sbatch" > survey.sbatch
job=$(PROGRAM=$program SONGS=$songs SINGERS=$singers OPTIONS=$options sbatch --parsable --output="$folder/%a.log" survey.sbatch)
echo "array $job of $tasks tasks"

# waits_for SECONDS WHAT COMMAND ..
waits_for() {
    local until=$((SECONDS + $1)) what=$2
    shift 2
    while ! "$@" > /dev/null 2>&1; do
        if [ $SECONDS -ge $until ]; then echo "waited in vain: $what"; tail -20 slurmctld.log; exit 1; fi
        sleep 0.05
    done
}

# A task dies in the middle: it is put into the queue again and goes on where it was.
waits_for 30 "task 1 has begun its part" test -s part1.db.unfinished
has_a_plan() { [ "$(sqlite3_rows part1.db.unfinished)" -gt 0 ]; }
waits_for 30 "task 1 has made a plan" has_a_plan
kill -9 $(pgrep -f "survey .*--task 1/$tasks ")
scontrol requeue "${job}_1"
echo "task 1 was killed with $(sqlite3_rows part1.db.unfinished) plans in its part, and put back"
# And so does the controller, once it has written down what it knows.
waits_for 30 "the controller has saved its state" test -s state/job_state
kill -9 "$(cat run/slurmctld.pid)"
echo "the controller was killed"
sleep 1
slurmctld 2>>start.log
over() { [ "$(squeue -h -j "$job" 2>/dev/null | wc -l)" = 0 ] && squeue -h; }
waits_for 240 "the array is done" over
for task in $(seq $tasks); do
    [ -f "part$task.db" ] || { echo "part $task is missing"; cat "$task.log" slurmctld.log; exit 1; }
done

"$program" survey merge part*.db -o all.db 2>/dev/null
"$program" survey show whole.db -o whole.csv 2>/dev/null
"$program" survey show all.db -o all.csv 2>/dev/null
cmp whole.csv all.csv
echo "$(($(wc -l < all.csv) - 1)) plans of $tasks tasks: byte for byte those of one process"

# The same with GNU parallel, as two machines in a studio would: -S one,other names them.
parallel --will-cite -j 2 "'$program' survey '$songs' --singers $singers $options --task {}/$tasks -o piece{}.db" ::: $(seq $tasks) 2>/dev/null
"$program" survey merge piece*.db -o pieces.db 2>/dev/null
"$program" survey show pieces.db -o pieces.csv 2>/dev/null
cmp whole.csv pieces.csv
echo "and so do $tasks pieces of GNU parallel"
