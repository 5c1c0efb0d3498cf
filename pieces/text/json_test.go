package text

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestJSON(t *testing.T) {
	given := map[string]string{"name": "li\x1b[2Jnen \u009b31m\u202e\u007f\U000e0041 Żofia"}
	encoded, err := json.MarshalIndent(given, "", " ")
	require.NoError(t, err)
	clean := JSON(encoded)
	assert.Equal(t, "{\n \"name\": \"li\\u001b[2Jnen \\u009b31m\\u202e\\u007f\\udb40\\udc41 Żofia\"\n}", string(clean))
	var read map[string]string
	require.NoError(t, json.Unmarshal(clean, &read))
	assert.Equal(t, given, read)
	assert.Equal(t, "{}", string(JSON([]byte("{}"))))
}
