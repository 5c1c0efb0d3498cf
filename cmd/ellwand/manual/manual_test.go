package manual_test

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/jedib0t/go-pretty/v6/text"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/manual"
)

// The schema that editors read has the keys; each stands on a page, at the
// beginning of a line.
func TestEveryKeyOfTheSchemaStandsOnAPage(t *testing.T) {
	var all strings.Builder
	for _, topic := range manual.Topics() {
		all.WriteString(topic.Page(80))
	}
	keys := schemaKeys(t)
	require.Greater(t, len(keys), 100)
	for _, key := range keys {
		assert.Regexp(t, `(?m)^  `+regexp.QuoteMeta(key)+`( \*)?  `, all.String(), key)
	}
	for _, mapping := range job.Reference() {
		for _, key := range mapping.Keys {
			assert.NotEmpty(t, key.Text, "%s: %s has no description", mapping.Place, key.Name)
		}
	}
}

// schemaKeys are the names of all properties of the schema.
func schemaKeys(t *testing.T) []string {
	t.Helper()
	var written bytes.Buffer
	require.NoError(t, job.WriteSchema(&written))
	type object struct {
		Properties map[string]json.RawMessage `json:"properties"`
	}
	var schema struct {
		object
		Defs map[string]object `json:"$defs"`
	}
	require.NoError(t, json.Unmarshal(written.Bytes(), &schema))
	schema.Defs[""] = schema.object
	var out []string
	for _, def := range schema.Defs {
		for key := range def.Properties {
			out = append(out, key)
		}
	}
	return out
}

// A mapping stands on one page, and every page has its text.
func TestEveryMappingHasItsPage(t *testing.T) {
	times := map[string]int{}
	for _, topic := range manual.Topics() {
		for _, mapping := range job.Reference() {
			if strings.Contains(topic.Page(80), "\n"+manual.Heading(mapping.Place)+"\n") {
				times[mapping.Place]++
			}
		}
	}
	for _, mapping := range job.Reference() {
		assert.Equal(t, 1, times[mapping.Place], "%q stands on so many pages", mapping.Place)
	}
	files, err := filepath.Glob("pages/*.txt")
	require.NoError(t, err)
	assert.Len(t, files, len(manual.Topics()), "a text without a topic, or a topic without a text")
	for _, topic := range manual.Topics() {
		prose, err := os.ReadFile("pages/" + topic.Name + ".txt")
		require.NoError(t, err)
		assert.NotEmpty(t, prose)
	}
}

func TestPagesKeepToTheirWidth(t *testing.T) {
	for _, width := range []int{40, 60, 80, 200} {
		for _, topic := range manual.Topics() {
			for _, line := range strings.Split(topic.Page(width), "\n") {
				assert.LessOrEqual(t, text.StringWidth(line), width, "%s: %s", topic.Name, line)
			}
		}
	}
}

func TestFind(t *testing.T) {
	tests := []struct{ asked, topic string }{
		{"cloth", "cloth"}, {"repeat", "cloth"}, {"straight-cut", "straight_cut"}, {"linings", "parts"},
		{"tax", "prices"}, {"Job", "job"}, {"nothing", ""},
	}
	for _, tt := range tests {
		topic, found := manual.Find(tt.asked)
		assert.Equal(t, tt.topic != "", found, tt.asked)
		assert.Equal(t, tt.topic, topic.Name, tt.asked)
	}
}
