-- Does with a booth file what a person does, by Neovim's own client, and writes what came of it as JSON.
local results = {}
local function finish()
  vim.fn.writefile({ vim.fn.json_encode(results) }, vim.env.RESULTS)
  vim.cmd('qall!')
end

local ok, fault = pcall(function()
  vim.cmd('edit ' .. vim.env.BOOTH)
  vim.wait(20000, function() return #vim.diagnostic.get(0) > 0 end, 50)
  results.filetype = vim.bo.filetype
  results.diagnostics = vim.tbl_map(function(each)
    return { line = each.lnum, message = each.message, severity = each.severity }
  end, vim.diagnostic.get(0))

  local function ask(method, params)
    local answers = vim.lsp.buf_request_sync(0, method, params, 20000)
    for _, answer in pairs(answers or {}) do return answer.result end
  end
  local function at(line, word)
    local text = vim.api.nvim_buf_get_lines(0, line, line + 1, false)[1]
    vim.api.nvim_win_set_cursor(0, { line + 1, (text:find(word, 1, true)) - 1 })
    return vim.lsp.util.make_position_params()
  end

  results.hover = ask('textDocument/hover', at(1, 'Left')).contents.value
  results.completion = vim.tbl_map(function(item) return item.label end,
    ask('textDocument/completion', at(1, '}')).items)

  local actions = ask('textDocument/codeAction', vim.tbl_extend('force', vim.lsp.util.make_given_range_params({ 3, 30 }, { 3, 30 }), {
    context = { diagnostics = vim.lsp.diagnostic.get_line_diagnostics(0, 2) },
  }))
  results.actions = vim.tbl_map(function(action) return action.title end, actions)
  vim.lsp.util.apply_workspace_edit(actions[1].edit, 'utf-16')
  results.fixed = vim.api.nvim_buf_get_lines(0, 0, -1, false)

  vim.api.nvim_buf_set_lines(0, 1, 2, false, { 'desk Left {width 60in height 40in}' })
  vim.lsp.buf.formatting_sync({ tabSize = 2, insertSpaces = true }, 20000)
  results.formatted = vim.api.nvim_buf_get_lines(0, 0, -1, false)
end)
if not ok then results.fault = tostring(fault) end
finish()
