package job

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language/spoken"
)

// faultsOf parses and resolves a job that must have faults.
func faultsOf(t *testing.T, text string) []Fault {
	t.Helper()
	file, err := Parse("x.yaml", []byte(text))
	if err == nil {
		_, err = file.Resolve()
	}
	require.Error(t, err, text)
	var faults *Faults
	require.True(t, errors.As(err, &faults), "%T is no list of faults: %s", err, err)
	for _, fault := range faults.List {
		assert.Positive(t, fault.Line, fault.Said.String())
	}
	return faults.List
}

// marked takes the arrow out of a job, and says in which line it stands.
func marked(t *testing.T, text string) (string, int) {
	t.Helper()
	before, _, found := strings.Cut(text, "→")
	require.True(t, found && strings.Count(text, "→") == 1, "one line is marked: %s", text)
	return strings.Replace(text, "→", "", 1), 1 + strings.Count(before, "\n")
}

// refusedJob is a job with the line marked that is to be blamed.
type refusedJob struct{ name, text, want string }

// TestEveryFaultNamesItsLine goes through the faults of a job file; in each of
// the jobs an arrow marks the line that is to be blamed. The text is the
// beginning of the sentence, and must be all that is found.
func TestEveryFaultNamesItsLine(t *testing.T) {
	for _, group := range [][]refusedJob{topFaults, bodyFaults, garmentFaults, pieceFaults, bodiceFaults, sleeveFaults,
		lowerFaults, partFaults, clothFaults, moneyFaults, moreFaults} {
		for _, tt := range group {
			t.Run(tt.name, func(t *testing.T) {
				text, line := marked(t, tt.text)
				got := faultsOf(t, text)
				assert.Len(t, got, 1, "%v", got)
				assert.Equal(t, line, got[0].Line, got[0].Said.String())
				assert.Contains(t, got[0].Said.String(), tt.want)
				spoken.Both(t, tt.name, got[0].Said)
			})
		}
	}
}

// A fault is a value: a page can show it beside its field.
func TestFaultsKnowTheirGarmentAndPiece(t *testing.T) {
	got := faultsOf(t, onBlouse("    pieces:\n      - {name: cuff, width: 24, height: 10, cut: 3, pair: yes}\n"))
	assert.Equal(t, strict.Contradiction, got[0].Kind)
	assert.Equal(t, "garments[0].pieces[0].pair", got[0].Path.String())
	assert.Equal(t, [2]string{"blouse", "cuff"}, [2]string{got[0].Garment, got[0].Piece})
	got = faultsOf(t, onBlouse("    parts: [{kind: cuff, depth: -1}]\n"))
	assert.Equal(t, strict.OutOfRange, got[0].Kind)
	assert.Equal(t, [2]string{"blouse", "cuff"}, [2]string{got[0].Garment, got[0].Piece})
}
