package answers

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/safety"
	"ellwand/testdata/program"
)

// Whatever is cut from says its cautions, for children those of children's
// clothing, and a quote says whose law it follows.
func TestCautionsAreOnEveryPaper(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	child, adult := filepath.Join(folder, "child.yaml"), filepath.Join(folder, "adult.yaml")
	const garment = `
garments: [{name: frock, bodice: {dart: none, fit: easy, back: seam}}]
cloths: [{name: shell, width: 140, price: 12}]
currency: EUR
units: cm
`
	require.NoError(t, os.WriteFile(child, []byte("job: Nursery frock\nsize: 116\ntable: children"+garment), 0o600))
	require.NoError(t, os.WriteFile(adult, []byte("job: House frock\nsize: 100\ntable: men"+garment), 0o600))
	for _, c := range []struct {
		name string
		args []string
		want []string
		not  string
	}{
		{"plan", []string{"marker", child}, []string{safety.Blades, safety.Irons, safety.Children}, ""},
		{"marker at full size", []string{"marker", child, "--full"}, []string{safety.Blades, safety.Irons, safety.Children},
			""},
		{"pieces at full size", []string{"print", child}, []string{safety.Blades, safety.Irons, safety.Children}, ""},
		{"for a man", []string{"marker", adult, "--full"}, []string{safety.Blades, safety.Irons}, "hildren's clothing"},
		{"quote", []string{"quote", child}, []string{safety.Law}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			file := filepath.Join(t.TempDir(), "out.pdf")
			program.Output(t, append(c.args, "-o", file, "--passes", "2")...)
			text, err := exec.Command("pdftotext", "-raw", file, "-").Output()
			require.NoError(t, err, "pdftotext, which .ci/run installs")
			words := strings.Join(strings.Fields(string(text)), " ")
			for _, want := range c.want {
				assert.Contains(t, unhyphenated(words), unhyphenated(want))
			}
			if c.not != "" {
				assert.NotContains(t, words, c.not)
			}
		})
	}
}

// unhyphenated leaves out what a line may break at.
func unhyphenated(words string) string { return strings.NewReplacer(" ", "", "-", "").Replace(words) }
