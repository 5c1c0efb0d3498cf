package figure

import (
	"bytes"
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
)

// A picture is one well-formed document in which something is drawn.
func assertPicture(t *testing.T, picture []byte) {
	t.Helper()
	reader := xml.NewDecoder(bytes.NewReader(picture))
	paths := 0
	for {
		token, err := reader.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err)
		if start, ok := token.(xml.StartElement); ok && start.Name.Local == "path" {
			paths++
		}
	}
	assert.Greater(t, paths, 3)
	assert.NotContains(t, string(picture), "NaN")
	assert.Less(t, len(picture), 40_000, "a page of pictures stays light")
}

func TestGarments(t *testing.T) {
	seen := map[string]string{}
	for _, name := range Garments() {
		var out bytes.Buffer
		require.NoError(t, Garment(&out, name), name)
		assertPicture(t, out.Bytes())
		body := strings.Replace(out.String(), name, "", 1)
		assert.Empty(t, seen[body], "%s looks like another", name)
		seen[body] = name
	}
	assert.ErrorIs(t, Garment(io.Discard, "crinoline"), ErrUnknown)
}

func TestTapeForEveryMeasurement(t *testing.T) {
	for _, m := range draft.Measurements() {
		var out bytes.Buffer
		require.NoError(t, Tape(&out, strings.ReplaceAll(string(m), " ", "_")), "no picture of %s", m)
		assertPicture(t, out.Bytes())
	}
	assert.ErrorIs(t, Tape(io.Discard, "../secret"), ErrUnknown)
}

func TestOptionsHaveAPictureForEveryChoice(t *testing.T) {
	require.NotEmpty(t, Options())
	for _, option := range Options() {
		seen := map[string]string{}
		for choice := range optionSketches[option] {
			var out bytes.Buffer
			require.NoError(t, Option(&out, option, choice), "%s %s", option, choice)
			assertPicture(t, out.Bytes())
			body := strings.Replace(out.String(), choice, "", 1)
			assert.Empty(t, seen[body], "%s: %s looks like another", option, choice)
			seen[body] = choice
		}
	}
	assert.ErrorIs(t, Option(io.Discard, "skirt.shape", "crinoline"), ErrUnknown)
	assert.ErrorIs(t, Option(io.Discard, "skirt.colour", "red"), ErrUnknown)
}
