package job

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func questionsOf(t *testing.T, text string) []string {
	t.Helper()
	file, err := Parse("x.yaml", []byte(text))
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err, text)
	var out []string
	for _, question := range work.Questions {
		out = append(out, question.String())
	}
	return out
}

// Slips that a job can be cut from all the same are asked about, with the line and the
// likely cause; the same with what was meant is not.
func TestSlipsAreQuestioned(t *testing.T) {
	const inches = "job: a\nunits: in\nbody:\n  bust_girth: 36\n  waist_girth: 29\n  neck_base_girth: 14 1/2\n" +
		"  back_neck_point_to_waist: 16 1/4\n  shoulder_to_wrist: 23 1/4\n  upper_arm_girth: 11 1/2\n" +
		"garments:\n  - name: blouse\n    bodice: {}\n    sleeve: {wrist_width: 10 1/4}\n    parts:\n" +
		"      - {kind: cuff, depth: 2 1/2}\n    pieces:\n      - {name: collar, width: 16, height: 3}\n" +
		"allowances: {seams: 5/8}\ncloths:\n  - {name: shell, width: 45, gap: 0, step: 1/8 yd}\n"
	require.Empty(t, questionsOf(t, inches))
	for _, tt := range []struct{ was, slip, want string }{
		{"width: 45,", "width: 140,", `x.yaml:20: cloth "shell" is 140 in wide, and cloth is mostly sold 31 1/2 in to 72 ` +
			`13/16 in wide; was 140 cm meant?`},
		{"width: 45,", "width: 14 cm,", "was 140 cm meant?"},
		{"width: 45,", "width: 14 1/2,", "x.yaml:20: cloth \"shell\" is 14 1/2 in wide"},
		{"shoulder_to_wrist: 23 1/4", "shoulder_to_wrist: 13 1/4",
			"x.yaml:8: a shoulder to wrist of 13 1/4 in hardly goes with a bust girth of 36 in"},
		{"shoulder_to_wrist: 23 1/4", "shoulder_to_wrist: 13 1/4", "was 23 1/4 in meant?"},
		{"depth: 2 1/2", "depth: 8", "x.yaml:15: a cuff 8 in deep is unusual; was 8 cm meant?"},
		{"{kind: cuff, depth: 2 1/2}", "{kind: cuff, length: 18}",
			"x.yaml:15: a cuff 18 in long joins a seam that takes one of 7 15/16 in; was 8 in meant?"},
		{"{name: collar, width: 16, height: 3}", "{name: mandarin collar, width: 9, height: 1 1/2}",
			"x.yaml:17: a mandarin collar 9 in long joins a seam"},
		{"{name: collar, width: 16, height: 3}", "{name: collar, width: 6, height: 3}", "was 16 in meant?"},
		{"seams: 5/8", "seams: 5", "x.yaml:18: an allowance of 5 in at seams is much"},
		{"gap: 0", "gap: 3", "a gap between pieces of 3 in is unusual; was 3 cm meant?"},
	} {
		text := strings.Replace(inches, tt.was, tt.slip, 1)
		require.NotEqual(t, inches, text)
		got := strings.Join(questionsOf(t, text), "\n")
		assert.Contains(t, got, tt.want)
		assert.Equal(t, 1, len(questionsOf(t, text)), "%s: %s", tt.slip, got)
	}
}

// Either of two measurements may be the slip.
func TestEitherMeasurementIsQuestioned(t *testing.T) {
	got := questionsOf(t, "job: a\nunits: in\nbody:\n  bust_girth: 27\n  waist_girth: 30\ngarments:\n  - name: skirt\n"+
		"    skirt: {}\ncloths:\n  - {name: shell, width: 45}\n")
	assert.Equal(t, []string{"x.yaml:5: a waist girth of 30 in hardly goes with a bust girth of 27 in (the " +
		"women's table has about 20 11/16 in): was 20 in, or a bust girth of 37 in meant?"}, got)
}

func TestHemsBelowTheFloorAreQuestioned(t *testing.T) {
	const job = "job: a\nunits: in\nbody: {waist_girth: 29, hip_girth: 39, height: 65}\ngarments:\n" +
		"  - name: skirt\n    skirt: {length: 26}\ncloths:\n  - {name: shell, width: 45}\n"
	assert.Empty(t, questionsOf(t, job))
	assert.Equal(t, []string{"x.yaml:6: a skirt that ends 62 in below the waist is unusual; was 62 cm meant?"},
		questionsOf(t, strings.Replace(job, "length: 26", "length: 62", 1)))
}

// Nothing is asked about the example jobs and the starter.
func TestSoundJobsAreNotQuestioned(t *testing.T) {
	paths, err := filepath.Glob("../../../testdata/*.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range append(paths, "../starter.yaml") {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		if !strings.Contains(string(text), "garments:") {
			continue // no job, but pieces
		}
		assert.Empty(t, questionsOf(t, string(text)), path)
	}
}
