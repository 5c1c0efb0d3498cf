//go:build linux

package trial

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
	"unsafe"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/program"
)

// Ctrl-C, a request to end and a terminal that is closed end the search: the best is
// shown, every document says so, and no time is promised that was not searched.
func TestInterrupts(t *testing.T) {
	// A process that catches a signal hands it on as it usually is, also where it was
	// begun with it ignored, as under nohup.
	caught := make(chan os.Signal, 1)
	signal.Notify(caught, syscall.SIGHUP)
	defer signal.Stop(caught)
	home := t.TempDir()
	blouse, err := filepath.Abs("../../../testdata/blouse.yaml")
	require.NoError(t, err)
	tests := []struct {
		signal syscall.Signal
		args   []string
		says   string
	}{
		{syscall.SIGINT, []string{"estimate", blouse, "--effort", "long", "--anew"}, "to buy"},
		{syscall.SIGTERM, []string{"estimate", blouse, "--effort", "long", "--anew", "--json"}, `"ended_early": true`},
		{syscall.SIGHUP, []string{"marker", blouse, "--effort", "long", "--anew", "-o", filepath.Join(home, "plan.pdf")},
			"is drawn in"},
		{syscall.SIGINT, []string{"remnant", blouse, "--cloth", "shell", "--length", "105cm", "--time", "20m", "--effort",
			"long", "--anew"},
			"ended early"},
	}
	for _, tt := range tests {
		t.Run(fmt.Sprint(tt.args[0], " ", tt.signal), func(t *testing.T) {
			terminal, slave := openTerminal(t)
			run := exec.Command(program.Path, tt.args...)
			var out bytes.Buffer
			run.Stdout, run.Stderr = &out, slave
			run.Env = append(os.Environ(), "XDG_CACHE_HOME="+filepath.Join(home, "cache"), "TERM=xterm", "COLUMNS=200")
			require.NoError(t, run.Start())
			require.NoError(t, slave.Close())
			shown := untilProgress(t, terminal)
			require.NoError(t, run.Process.Signal(tt.signal))
			sent := time.Now()
			rest := make(chan string)
			go func() { rest <- shown + untilClosed(terminal) }()
			_ = run.Wait() // the status says it
			t.Logf("%s ended %s after the signal", tt.args[0], time.Since(sent).Round(time.Millisecond))
			said := out.String() + strings.Join(strings.Fields(<-rest), " ")
			assert.Contains(t, []int{0, 3}, run.ProcessState.ExitCode(), said)
			assert.Contains(t, said, tt.says)
			assert.Contains(t, said, "ended")
			assert.NotContains(t, said, "within 20")
		})
	}
	text, err := os.ReadFile(filepath.Join(home, "plan.pdf"))
	require.NoError(t, err)
	assert.True(t, bytes.HasSuffix(bytes.TrimSpace(text), []byte("%%EOF")), "the plan is whole")
}

// openTerminal opens a pseudo-terminal (pty(7)).
func openTerminal(t *testing.T) (terminal, slave *os.File) {
	t.Helper()
	terminal, err := os.OpenFile("/dev/ptmx", os.O_RDWR|syscall.O_NOCTTY, 0)
	if err != nil {
		t.Skip("there are no pseudo-terminals here")
	}
	t.Cleanup(func() { terminal.Close() })
	var locked, number int32
	for request, value := range map[uintptr]*int32{syscall.TIOCSPTLCK: &locked, syscall.TIOCGPTN: &number} {
		_, _, failed := syscall.Syscall(syscall.SYS_IOCTL, terminal.Fd(), request, uintptr(unsafe.Pointer(value)))
		require.Zero(t, failed)
	}
	slave, err = os.OpenFile(fmt.Sprintf("/dev/pts/%d", number), os.O_RDWR|syscall.O_NOCTTY, 0)
	require.NoError(t, err)
	return terminal, slave
}

// untilProgress reads a terminal until the progress of a search is seen.
func untilProgress(t *testing.T, terminal *os.File) string {
	t.Helper()
	var seen strings.Builder
	buffer := make([]byte, 4096)
	for !strings.Contains(seen.String(), "Ctrl-C") {
		n, err := terminal.Read(buffer)
		seen.Write(buffer[:n])
		require.NoError(t, err, "it ended before it was told to: %s", seen.String())
	}
	return seen.String()
}

func untilClosed(terminal *os.File) string {
	var seen strings.Builder
	buffer := make([]byte, 4096)
	for {
		n, err := terminal.Read(buffer)
		seen.Write(buffer[:n])
		if err != nil { // as a terminal that nobody has open gives
			return seen.String()
		}
	}
}
