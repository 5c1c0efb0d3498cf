package view

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/folder"
	"ellwand/pieces/language"
)

// spokenKeys are the keys of what the program says in sentences.
var spokenKeys = map[string]bool{"sentence": true, "fault": true, "why": true, "notes": true}

// ownWords are the places for which the page has words of its own.
var ownWords = map[string]bool{"truing": true}

// A job is shown to a German reader in German: no sentence is the English one.
func TestJobsAreShownInTheLanguageOfTheReader(t *testing.T) {
	jobs, err := filepath.Glob("../../../../testdata/*.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, jobs)
	texts := map[string]string{}
	for _, path := range jobs {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		texts[filepath.Base(path)] = string(text)
	}
	for i, text := range []string{
		"job: Coat\n", "job: Coat\nunits: ell\n", "job: Coat\nunits: cm\ncolour: red\n",
		"job: Skirt\nunits: cm\nbody: {waist_girth: 70 ells, hip_girth: 30}\ngarments: [{name: skirt, skirt: {}}]\n" +
			"cloths: [{name: shell, width: -3}]\n",
		"job: Skirt\nunits: cm\nbody: {waist_girth: 72, hip_girth: 98}\ngarments: [{name: skirt, skirt: {length: 150}}]\n" +
			"cloths: [{name: shell, width: 14}]\n",
	} {
		texts["faulty"+strconv.Itoa(i)+".yaml"] = text
	}
	said := 0
	for name, text := range texts {
		shown := func(reader language.Language) any { return shownTo(t, name, text, reader) }
		said += spokenApart(t, name, shown(language.English), shown(language.German), false)
	}
	assert.Greater(t, said, 10)
}

// shownTo a reader is a job as JSON has it.
func shownTo(t *testing.T, name, text string, reader language.Language) any {
	t.Helper()
	home := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(home, name), []byte(text), 0o600))
	f, err := folder.Open(home)
	require.NoError(t, err)
	d, err := desk.Open(f, name)
	require.NoError(t, err)
	defer d.Close()
	job, err := Of(name, d.State(), reader)
	require.NoError(t, err)
	data, err := json.Marshal(job)
	require.NoError(t, err)
	var out any
	require.NoError(t, json.Unmarshal(data, &out))
	return out
}

// spokenApart holds that what is said in sentences differs; it counts them.
func spokenApart(t *testing.T, where string, english, german any, spoken bool) int {
	t.Helper()
	said := 0
	switch one := english.(type) {
	case map[string]any:
		other := german.(map[string]any)
		for key, value := range one {
			if !ownWords[key] {
				said += spokenApart(t, where+": "+key, value, other[key], spokenKeys[key])
			}
		}
	case []any:
		other := german.([]any)
		require.Len(t, other, len(one), where)
		for i, value := range one {
			said += spokenApart(t, where, value, other[i], spoken)
		}
	case string:
		if spoken && one != "" {
			assert.NotEqual(t, one, german, where)
			said++
		}
	}
	return said
}
